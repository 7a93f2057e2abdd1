package org.shelterwright.layouts.asbuilt;

import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.asbuilt.Weighing.Support;
import org.shelterwright.layouts.asbuilt.Weighing.Tilt;

/**
 * Mass and centre from scale readings: {@code x = Σ Fᵢ xᵢ / Σ Fᵢ}, {@code y} alike. Tilted by θ with the front up, the centre stands
 * over {@code x′ = x − (z − r) tan θ}, so {@code z = r + (x − x′) / tan θ}, with the height r of wheel centres or pads. Readings are
 * taken to be independent, ranges add as the root of the sum of squares.
 *
 * <p>Source: statics; the tilted weighing as in ISO 10392 (from memory), where it is written
 * {@code h = r + L ΔF / (W tan θ)} with the wheelbase L and the change ΔF of an axle's reading.
 */
public final class Scales {
    private Scales() {}

    /** Mass and centre of all that stood on the scales. */
    public static Balance of(Weighing weighing) {
        double kg = sum(weighing, Support::levelKg);
        double x = moment(weighing, Support::levelKg, Scales::x) / kg;
        double y = moment(weighing, Support::levelKg, Scales::y) / kg;
        double kgRange = Math.sqrt(sum(weighing, one -> square(one.uncertaintyKg())));
        double xRange = range(weighing, kg, x, Scales::x);
        double yRange = range(weighing, kg, y, Scales::y);
        Tilt tilt = weighing.tilt();
        if (tilt == null) {
            return new Balance(kg, kgRange, x, xRange, y, yRange, null, 0);
        }
        double tilted = sum(weighing, Scales::tilted);
        double shifted = moment(weighing, Scales::tilted, Scales::x) / tilted;
        double angle = Math.toRadians(tilt.frontUpDegrees());
        double above = (x - shifted) / Math.tan(angle);
        double zRange = Math.sqrt(
                (square(xRange) + square(range(weighing, tilted, shifted, Scales::x))) / square(Math.tan(angle))
                        + square((x - shifted) / square(Math.sin(angle)) * Math.toRadians(tilt.uncertaintyDegrees())));
        return new Balance(kg, kgRange, x, xRange, y, yRange, weighing.pivotHeight() * 1e-6 + above, zRange);
    }

    private static double range(Weighing weighing, double kg, double centre, ToDoubleFunction<Support> place) {
        return Math.sqrt(sum(weighing, one -> square((place.applyAsDouble(one) - centre) / kg * one.uncertaintyKg())));
    }

    private static double sum(Weighing weighing, ToDoubleFunction<Support> value) {
        return weighing.supports().stream().mapToDouble(value).sum();
    }

    private static double moment(Weighing weighing, ToDoubleFunction<Support> kg, ToDoubleFunction<Support> place) {
        return sum(weighing, one -> kg.applyAsDouble(one) * place.applyAsDouble(one));
    }

    private static double x(Support one) {
        return one.x() * 1e-6;
    }

    private static double y(Support one) {
        return one.y() * 1e-6;
    }

    private static double tilted(Support one) {
        @Nullable Double kg = one.tiltedKg();
        if (kg == null) {
            throw new IllegalStateException("A tilted weighing has a tilted reading of every support.");
        }
        return kg;
    }

    private static double square(double value) {
        return value * value;
    }
}
