package org.shelterwright.layouts.asbuilt;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.asbuilt.Prediction.Part;

/**
 * What the scales say against the prediction.
 *
 * @param differenceKg weighed less predicted mass (kg)
 * @param rangeKg half width of its range (kg)
 * @param differs whether mass or centre differ by more than their ranges allow
 * @param unlisted where the difference must be if it is one thing; {@code null} if the masses agree
 * @param near parts nearest to that place in plan, the nearest first
 * @param corrections changes of masses that would explain the scales, the largest first: the least ones against their ranges
 */
public record Reconciliation(
        Balance weighed,
        Balance predicted,
        double differenceKg,
        double rangeKg,
        boolean differs,
        @Nullable Balance unlisted,
        List<Part> near,
        List<Correction> corrections) {
    private static final int NEAREST = 4;
    private static final int MOST_CORRECTIONS = 8;
    private static final double LEAST_KG = 0.05;

    /** A change of the mass of a part (kg). */
    public record Correction(Part part, double kg) {}

    public Reconciliation {
        near = List.copyOf(near);
        corrections = List.copyOf(corrections);
    }

    /** Compares a weighing with the prediction for it. */
    public static Reconciliation of(Weighing weighing, Prediction prediction) {
        Balance weighed = Scales.of(weighing);
        Balance predicted = prediction.balance();
        double difference = weighed.kg() - predicted.kg();
        double range = Math.hypot(weighed.kgRange(), predicted.kgRange());
        boolean massDiffers = Math.abs(difference) > range;
        boolean differs = massDiffers
                || Math.abs(weighed.xM() - predicted.xM()) > Math.hypot(weighed.xRangeM(), predicted.xRangeM())
                || Math.abs(weighed.yM() - predicted.yM()) > Math.hypot(weighed.yRangeM(), predicted.yRangeM())
                || heightDiffers(weighed, predicted);
        Balance unlisted = massDiffers ? unlisted(weighed, predicted, difference, range) : null;
        return new Reconciliation(
                weighed,
                predicted,
                difference,
                range,
                differs,
                unlisted,
                unlisted == null ? List.of() : near(prediction, unlisted),
                differs ? corrections(weighed, predicted, prediction) : List.of());
    }

    private static boolean heightDiffers(Balance weighed, Balance predicted) {
        Double a = weighed.zM();
        Double b = predicted.zM();
        return a != null && b != null && Math.abs(a - b) > Math.hypot(weighed.zRangeM(), predicted.zRangeM());
    }

    /** The one thing that makes up the difference: its moments are what the scales have more than the prediction. */
    private static Balance unlisted(Balance weighed, Balance predicted, double kg, double range) {
        double x = (weighed.kg() * weighed.xM() - predicted.kg() * predicted.xM()) / kg;
        double y = (weighed.kg() * weighed.yM() - predicted.kg() * predicted.yM()) / kg;
        double xRange = momentRange(weighed.kg(), weighed.xRangeM(), predicted.kg(), predicted.xRangeM(), kg);
        double yRange = momentRange(weighed.kg(), weighed.yRangeM(), predicted.kg(), predicted.yRangeM(), kg);
        return new Balance(kg, range, x, xRange, y, yRange, null, 0);
    }

    private static double momentRange(double kgA, double rangeA, double kgB, double rangeB, double kg) {
        return Math.hypot(kgA * rangeA, kgB * rangeB) / Math.abs(kg);
    }

    private static List<Part> near(Prediction prediction, Balance place) {
        return prediction.parts().stream()
                .filter(part -> part.unit() != null)
                .sorted(Comparator.comparingDouble(part -> Math.hypot(part.xM() - place.xM(), part.yM() - place.yM())))
                .limit(NEAREST)
                .toList();
    }

    /**
     * The least changes d of masses, {@code Σ (d / u)² → min} with the half widths u, that give the weighed mass and moments:
     * {@code d = u² (a + b x + c y)}, with a, b and c from three linear equations.
     */
    private static List<Correction> corrections(Balance weighed, Balance predicted, Prediction prediction) {
        double[][] m = new double[3][4];
        for (Part part : prediction.parts()) {
            double w = part.rangeKg() * part.rangeKg();
            double[] f = {1, part.xM(), part.yM()};
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    m[i][j] += w * f[i] * f[j];
                }
            }
        }
        m[0][3] = weighed.kg() - predicted.kg();
        m[1][3] = weighed.kg() * weighed.xM() - predicted.kg() * predicted.xM();
        m[2][3] = weighed.kg() * weighed.yM() - predicted.kg() * predicted.yM();
        double[] solved = solve(m);
        List<Correction> corrections = new ArrayList<>();
        if (solved.length == 0) {
            return corrections;
        }
        for (Part part : prediction.parts()) {
            double kg = part.rangeKg() * part.rangeKg() * (solved[0] + solved[1] * part.xM() + solved[2] * part.yM());
            if (Math.abs(kg) >= LEAST_KG) {
                corrections.add(new Correction(part, kg));
            }
        }
        corrections.sort(Comparator.comparingDouble((Correction one) -> -Math.abs(one.kg()))
                .thenComparing(one -> one.part().name()));
        return corrections.subList(0, Math.min(MOST_CORRECTIONS, corrections.size()));
    }

    /** Gauss with pivots; no solution if the parts with a range lie on one line. */
    private static double[] solve(double[][] m) {
        for (int column = 0; column < 3; column++) {
            int pivot = column;
            for (int row = column + 1; row < 3; row++) {
                pivot = Math.abs(m[row][column]) > Math.abs(m[pivot][column]) ? row : pivot;
            }
            double[] swap = m[column];
            m[column] = m[pivot];
            m[pivot] = swap;
            if (Math.abs(m[column][column]) < 1e-9) {
                return new double[0];
            }
            for (int row = 0; row < 3; row++) {
                if (row != column) {
                    double factor = m[row][column] / m[column][column];
                    for (int k = column; k < 4; k++) {
                        m[row][k] -= factor * m[column][k];
                    }
                }
            }
        }
        return new double[] {m[0][3] / m[0][0], m[1][3] / m[1][1], m[2][3] / m[2][2]};
    }
}
