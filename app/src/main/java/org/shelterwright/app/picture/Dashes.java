package org.shelterwright.app.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Cuts a stretch of a dashed line into its dashes. */
final class Dashes {

    private Dashes() {}

    /**
     * The dashes on a stretch.
     *
     * @param way length of the line before the stretch
     * @param length of the stretch
     * @param dashes dash, gap, dash, gap...; empty for a continuous line
     * @return from and to of each dash, counted from the beginning of the stretch
     */
    static List<double[]> on(double way, double length, double[] dashes) {
        if (dashes.length == 0) {
            return List.of(new double[] {0, length});
        }
        double period = Arrays.stream(dashes).sum();
        List<double[]> on = new ArrayList<>();
        double at = -(way % period);
        for (int i = 0; at < length; i = (i + 1) % dashes.length) {
            double end = at + dashes[i];
            if (i % 2 == 0 && end > 0) {
                on.add(new double[] {Math.max(0, at), Math.min(length, end)});
            }
            at = end;
        }
        return on;
    }
}
