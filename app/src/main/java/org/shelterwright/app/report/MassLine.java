package org.shelterwright.app.report;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;

/**
 * One line of a mass statement. What is not known is {@code null}.
 *
 * @param reference item reference; empty if it has none
 * @param massKg mass as the data give it (kg)
 * @param source source letter: E estimated, C calculated, S supplier, W weighed
 * @param growthShare expected growth as a share of the mass
 * @param uncertaintyKg half width of the range of the mass (kg)
 * @param grownKg mass with growth (kg)
 * @param arm its centre, from the datum
 */
record MassLine(
        String reference,
        String name,
        String group,
        @Nullable Double massKg,
        char source,
        @Nullable Double growthShare,
        @Nullable Double uncertaintyKg,
        @Nullable Double grownKg,
        @Nullable Point arm) {

    /** Whether it counts in the totals. */
    boolean complete() {
        return grownKg != null && arm != null;
    }

    /** Moments of mass about the planes through the datum (kg·m); {@code null} if it is not complete. */
    double @Nullable [] momentsKgM() {
        Double mass = grownKg;
        Point at = arm;
        return mass == null || at == null
                ? null
                : new double[] {
                    mass * Lengths.metres(at.x()), mass * Lengths.metres(at.y()), mass * Lengths.metres(at.z())
                };
    }
}
