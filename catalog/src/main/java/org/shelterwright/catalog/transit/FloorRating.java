package org.shelterwright.catalog.transit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Millimetres;

/**
 * What a loading floor bears. What is not known is {@code null}.
 *
 * @param axleKg one axle of what is driven onto it (kg)
 * @param perMetreKg load on each metre of its length (kg/m)
 * @param pressureKPa under what stands on it (kPa)
 * @param concentrated load on a short length, from short to long
 */
public record FloorRating(
        @Nullable Double axleKg,
        @Nullable Double perMetreKg,
        @Nullable Double pressureKPa,
        List<Concentrated> concentrated) {
    public static final FloorRating UNKNOWN = new FloorRating(null, null, null, List.of());

    /**
     * The load that a length of the deck bears.
     *
     * @param length that the load rests on (µm)
     * @param loadKg load (kg)
     */
    public record Concentrated(@Millimetres int length, double loadKg) {}

    public FloorRating {
        concentrated = List.copyOf(concentrated);
        for (int i = 1; i < concentrated.size(); i++) {
            if (concentrated.get(i).length() <= concentrated.get(i - 1).length()) {
                throw new IllegalArgumentException("The concentrated loads must follow from short to long: "
                        + Lengths.format(concentrated.get(i).length()) + " mm comes after "
                        + Lengths.format(concentrated.get(i - 1).length()) + " mm.");
            }
        }
    }

    /** The load that a length bears: that of the longest entry that is not longer (kg); {@code null} if none is. */
    public @Nullable Double concentratedKg(int length) {
        Double found = null;
        for (Concentrated one : concentrated) {
            if (one.length() <= length) {
                found = one.loadKg();
            }
        }
        return found;
    }
}
