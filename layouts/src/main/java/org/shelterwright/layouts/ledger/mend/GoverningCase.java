package org.shelterwright.layouts.ledger.mend;

import java.util.function.ToIntFunction;
import org.shelterwright.catalog.item.Situation;

/**
 * The situation in which a measure is worst.
 *
 * @param amount the greater of both measures
 * @param situation where it is taken; on station if both are equal
 * @param state the situation in words; "always" if both are equal
 */
public record GoverningCase(int amount, Situation situation, String state) {
    /** Takes the measure in both situations. */
    public static GoverningCase of(ToIntFunction<Situation> measure) {
        int station = measure.applyAsInt(Situation.ON_STATION);
        int road = measure.applyAsInt(Situation.ON_THE_ROAD);
        if (station == road) {
            return new GoverningCase(station, Situation.ON_STATION, "always");
        }
        Situation worse = station > road ? Situation.ON_STATION : Situation.ON_THE_ROAD;
        return new GoverningCase(Math.max(station, road), worse, Wording.situation(worse));
    }
}
