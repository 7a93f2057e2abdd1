package org.shelterwright.layouts.brief;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Figures;

/**
 * A state in which a shelter works, such as "on station, hot day" or "generator off".
 *
 * @param live ids of the shore, generator and battery supplies that are there; others are live if what feeds them is
 * @param people inside
 * @param activity what they do; {@code null} if nobody is inside
 * @param hours longest time that it lasts (h), for which a battery must do; {@code null} if not stated
 * @param weather {@code null} if the air is not looked at in this state
 */
public record OperatingState(
        String id,
        String name,
        Situation situation,
        List<String> live,
        int people,
        @Nullable Activity activity,
        @Nullable Double hours,
        @Nullable Weather weather) {
    public OperatingState {
        live = List.copyOf(live);
        Figures.within("number of people", people, 0, 500);
        if (people > 0 && activity == null) {
            throw new IllegalArgumentException("The state \"" + id + "\" has people inside: give their activity.");
        }
        if (hours != null) {
            Figures.within("hours", hours, 0, 10_000);
        }
    }
}
