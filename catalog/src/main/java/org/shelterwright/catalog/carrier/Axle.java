package org.shelterwright.catalog.carrier;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Millimetres;

/**
 * An axle of a carrier.
 *
 * @param x its place in the frame of the carrier (µm)
 * @param track distance between the middles of the left and right wheels or wheel pairs (µm)
 * @param tareKg load on it when the carrier is empty, with full tanks and driver excluded (kg)
 * @param ratingKg load that it bears (kg); {@code null} if not known
 * @param wheelRatingKg load that each side bears (kg); {@code null}: half of the rating
 * @param twin twin tyres
 * @param group axles with the same number stand close together and share their load equally
 */
public record Axle(
        String name,
        @Millimetres int x,
        @Millimetres int track,
        double tareKg,
        @Nullable Double ratingKg,
        @Nullable Double wheelRatingKg,
        boolean steered,
        boolean driven,
        boolean twin,
        boolean airSuspension,
        int group) {
    public Axle {
        Figures.notNegative("tare of axle " + name + " (kg)", tareKg);
        if (track <= 0) {
            throw new IllegalArgumentException(
                    "The track of axle " + name + " = " + Lengths.format(track) + " mm must be above zero.");
        }
    }
}
