package org.shelterwright.layouts.air;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.brief.OperatingState;
import org.shelterwright.layouts.brief.Weather;
import org.shelterwright.layouts.power.PowerGap;

/**
 * The heat balance of one state, at the greatest room temperature. Heat into the room counts above zero.
 *
 * @param equipmentW of the units (W)
 * @param conversionW of converters and chargers (W)
 * @param peopleSensibleW what people warm the room by (W)
 * @param peopleLatentW what is in the moisture that they give off (W)
 * @param throughW through walls, roof, floor and openings by temperature (W)
 * @param sunW by the sun on them (W)
 * @param airM3h outside air that comes in (m³/h): for people or drawn in by an exhaust, to cool, and what leaks in
 * @param airSensibleW what it warms the room by (W)
 * @param airLatentW what is in its moisture (W)
 * @param lossThroughW what goes out through the body at the least room temperature (W), not below zero
 * @param lossAirW the same with the least outside air (W)
 * @param coolingW installed and live, at this outside temperature (W); {@code null} if not known
 * @param heatingW installed and live (W)
 * @param freshNeededM3h fresh air that the people need (m³/h); {@code null} if not known
 * @param freshM3h fresh air that is brought in (m³/h)
 * @param gaps what is missing
 */
public record StateHeat(
        OperatingState state,
        Weather weather,
        double equipmentW,
        double conversionW,
        double peopleSensibleW,
        double peopleLatentW,
        double throughW,
        double sunW,
        double airM3h,
        double airSensibleW,
        double airLatentW,
        double lossThroughW,
        double lossAirW,
        @Nullable Double coolingW,
        double heatingW,
        @Nullable Double freshNeededM3h,
        double freshM3h,
        List<PowerGap> gaps) {
    public StateHeat {
        gaps = List.copyOf(gaps);
    }

    /** All heat that comes in less all that goes out (W). */
    public double sumW() {
        return equipmentW + conversionW + peopleSensibleW + peopleLatentW + throughW + sunW + airSensibleW + airLatentW;
    }

    /** Cooling that is needed (W). */
    public double coolingNeededW() {
        return Math.max(0, sumW());
    }

    /** Heating that is needed before anything inside gives heat (W). */
    public double heatingNeededW() {
        return lossThroughW + lossAirW;
    }
}
