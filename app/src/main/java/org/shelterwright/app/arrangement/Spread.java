package org.shelterwright.app.arrangement;

import java.util.ArrayList;
import java.util.List;

/** Moves places on a line apart until each two are a distance apart, each as near to where it was as that allows. */
final class Spread {

    private Spread() {}

    /**
     * Spreads ascending places. Groups that would collide are merged and centred on the mean of what they want, as in
     * isotonic regression (pool adjacent violators). Cost: linear.
     */
    static double[] apart(double[] places, double distance) {
        List<double[]> groups = new ArrayList<>();
        for (int i = 0; i < places.length; i++) {
            // What the group's first place would be if this place alone decided, and the count of places.
            groups.add(new double[] {places[i], 1});
            while (groups.size() > 1) {
                double[] last = groups.get(groups.size() - 1);
                double[] before = groups.get(groups.size() - 2);
                if (before[0] + before[1] * distance <= last[0]) {
                    break;
                }
                double count = before[1] + last[1];
                before[0] = (before[0] * before[1] + (last[0] - before[1] * distance) * last[1]) / count;
                before[1] = count;
                groups.remove(groups.size() - 1);
            }
        }
        double[] spread = new double[places.length];
        int at = 0;
        for (double[] group : groups) {
            for (int i = 0; i < group[1]; i++) {
                spread[at++] = group[0] + i * distance;
            }
        }
        return spread;
    }
}
