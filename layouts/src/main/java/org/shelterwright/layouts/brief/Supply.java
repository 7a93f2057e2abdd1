package org.shelterwright.layouts.brief;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Current;
import org.shelterwright.catalog.source.Figures;

/**
 * A mains or bus that units draw from.
 *
 * @param id unique in the brief, such as "mains"
 * @param voltageV nominal voltage (V); of three phases that between a line and the neutral
 * @param phases 1 or 3; {@code null}: 1
 * @param ratingA current that each of its lines may bear without end (A), by breaker or fuse; {@code null}: what its
 *     source gives, which a shore supply and a battery do not state
 * @param source unit that it comes from: generator, battery box, or the unit that converts; {@code null} for a shore
 *     supply, or if not known
 * @param fedFrom ids of the supplies that it is converted from or charged from; in each state the first live one feeds it
 * @param charger unit that charges a battery; {@code null} if nothing does
 * @param diversity share of the sum of its loads that it bears at once; {@code null}: that of the rules
 */
public record Supply(
        String id,
        String name,
        Kind kind,
        Current current,
        double voltageV,
        @Nullable Integer phases,
        @Nullable Double ratingA,
        @Nullable String source,
        List<String> fedFrom,
        @Nullable String charger,
        @Nullable Double diversity) {
    public Supply {
        fedFrom = List.copyOf(fedFrom);
        Figures.positive("voltage (V)", voltageV);
        if (phases != null && phases != 1 && phases != 3) {
            throw new IllegalArgumentException("The phases of supply \"" + id + "\", " + phases + ", must be 1 or 3.");
        }
        if (ratingA != null) {
            Figures.positive("rating (A)", ratingA);
        }
        if (diversity != null) {
            Figures.within("diversity", diversity, 0, 1);
        }
        if (fedFrom.contains(id)) {
            throw new IllegalArgumentException("The supply \"" + id + "\" cannot be fed from itself.");
        }
    }

    /** Where a supply comes from. */
    public enum Kind {
        /** From outside, by a cable through the entry panel. */
        SHORE,
        GENERATOR,
        BATTERY,
        /** From another supply, by an inverter or a power supply. */
        CONVERTER
    }

    public int lines() {
        return phases == null ? 1 : phases;
    }

    Supply without(String unit) {
        return new Supply(
                id,
                name,
                kind,
                current,
                voltageV,
                phases,
                ratingA,
                unit.equals(source) ? null : source,
                fedFrom,
                unit.equals(charger) ? null : charger,
                diversity);
    }
}
