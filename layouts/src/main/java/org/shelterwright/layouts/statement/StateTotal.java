package org.shelterwright.layouts.statement;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;

/**
 * The total of one load state, with growth and without uncertainty. What cannot be told is {@code null} or empty.
 *
 * @param what such as "Filled body" or the name of the carrier
 * @param state the load state in words
 * @param massKg total (kg); {@code null} if a mass is missing
 * @param uncertaintyKg sum of all uncertainties (kg)
 * @param uncertaintyRssKg root of the sum of their squares (kg), for uncertainties that do not depend on each other
 * @param xMm centre of mass from the datum (mm)
 * @param inertia about the centre; {@code null} for vehicles, whose own inertia is not known
 * @param axles what each axle bears; empty for a body
 */
public record StateTotal(
        String what,
        String state,
        @Nullable Double massKg,
        double uncertaintyKg,
        double uncertaintyRssKg,
        @Nullable Double xMm,
        @Nullable Double yMm,
        @Nullable Double zMm,
        @Nullable Inertia inertia,
        List<AxleTotal> axles) {
    public StateTotal {
        axles = List.copyOf(axles);
    }

    /** Centre of mass from the datum; empty if a coordinate cannot be told. */
    public Optional<Point> centre() {
        return xMm == null || yMm == null || zMm == null
                ? Optional.empty()
                : Optional.of(new Point(micrometres(xMm), micrometres(yMm), micrometres(zMm)));
    }

    private static int micrometres(double mm) {
        return (int) Math.round(mm * Lengths.MM);
    }

    /**
     * What one axle bears.
     *
     * @param ratingKg {@code null} if not known
     */
    public record AxleTotal(
            String axle,
            double leftKg,
            double rightKg,
            @Nullable Double ratingKg) {
        public double loadKg() {
            return leftKg + rightKg;
        }

        /** What is left of the rating (kg); {@code null} if it is not known. */
        public @Nullable Double reserveKg() {
            return ratingKg == null ? null : Double.valueOf(ratingKg - loadKg());
        }
    }
}
