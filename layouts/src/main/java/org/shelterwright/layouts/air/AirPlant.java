package org.shelterwright.layouts.air;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.AirHandling;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.brief.Weather;
import org.shelterwright.layouts.power.Draw;
import org.shelterwright.layouts.power.PowerGap;
import org.shelterwright.layouts.power.StateFlow;
import org.shelterwright.layouts.scene.Scene;

/**
 * What the units of the body do to its air in one state: those that are on, and those that need no power.
 *
 * @param coolingW at the outside temperature of the state (W); {@code null} if a cooler does not say how it loses
 */
record AirPlant(@Nullable Double coolingW, double heatingW, double freshM3h, double exhaustM3h, List<PowerGap> gaps) {

    static AirPlant of(Scene scene, StateFlow flow, Weather weather) {
        double cooling = 0;
        boolean coolingKnown = true;
        double heating = 0;
        double fresh = 0;
        double exhaust = 0;
        List<PowerGap> gaps = new ArrayList<>();
        for (UnitSpec unit : HeatBalance.airUnits(scene)) {
            Optional<AirHandling> air = HeatBalance.air(scene, unit);
            if (air.isPresent() && on(scene, flow, unit)) {
                Double left = coolingShare(air.get(), weather);
                Double coolingW = air.get().coolingW();
                if (coolingW != null && left == null) {
                    coolingKnown = false;
                    gaps.add(new PowerGap(
                            unit.id(),
                            "How much " + unit.name() + " cools at " + weather.outsideC()
                                    + " °C is not known. Give coolingAtC and coolingPerKelvin in item " + unit.item()
                                    + "."));
                } else if (coolingW != null && left != null) {
                    cooling += coolingW * left;
                }
                heating += or0(air.get().heatingW());
                fresh += or0(air.get().freshAirM3h());
                exhaust += or0(air.get().exhaustM3h());
            }
        }
        return new AirPlant(coolingKnown ? Double.valueOf(cooling) : null, heating, fresh, exhaust, gaps);
    }

    /** A unit that takes no power is always on. */
    private static boolean on(Scene scene, StateFlow flow, UnitSpec unit) {
        return scene.layout().item(unit).power() == null
                || flow.draw(unit.id()).map(Draw::on).orElse(false);
    }

    private static @Nullable Double coolingShare(AirHandling air, Weather weather) {
        Double atC = air.coolingAtC();
        if (atC == null) {
            return null;
        }
        if (weather.outsideC() <= atC) {
            return 1.0;
        }
        Double perKelvin = air.coolingPerKelvin();
        return perKelvin == null ? null : Double.valueOf(Math.max(0, 1 - perKelvin * (weather.outsideC() - atC)));
    }

    private static double or0(@Nullable Double value) {
        return value == null ? 0 : value;
    }
}
