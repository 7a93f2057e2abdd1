package org.shelterwright.layouts.ledger.floor;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Rect;

/**
 * The heaviest running metre of a floor zone: the window of 1 m along x (or the zone, if it is shorter) over the width of the zone
 * that bears most. Loads are even over each patch, so that what a window bears changes linearly between the places where one of
 * its ends meets an edge of a patch. It can only turn from more to less where the window begins with a patch or ends with one.
 *
 * @param kg what the window bears (kg)
 * @param from where it begins (µm)
 */
record StripLoad(double kg, int from) {
    /**
     * The heaviest window over all combinations of contents. For each window the worst combination of each standing adds
     * up; each changes linearly between the same places, so the most of them bends upwards there and the sum is most at one.
     * Cost: linear in the number of patches, times those of standings with contents.
     */
    static StripLoad heaviest(Rect zone, FloorSituation situation) {
        FloorCase low = situation.low();
        if (situation.varied().isEmpty()) {
            return heaviest(zone, low, low.worst());
        }
        double[] fixed = low.worst().clone();
        for (FloorSituation.Varied one : situation.varied()) {
            Arrays.fill(fixed, one.from(), one.from() + one.patches(), 0);
        }
        int window = Math.min(Lengths.M, zone.x1() - zone.x0());
        Ramp ramp = ramp(zone, low, fixed);
        StripLoad most = new StripLoad(-1, zone.x0());
        for (int start : starts(zone, low, window)) {
            Rect area = new Rect(start, zone.y0(), start + window, zone.y1());
            double kg = ramp.within(start, window);
            for (FloorSituation.Varied one : situation.varied()) {
                kg += one.sum(one.best(k -> low.within(area, k)), k -> low.within(area, k));
            }
            if (kg > most.kg()) {
                most = new StripLoad(kg, start);
            }
        }
        return most;
    }

    private static int[] starts(Rect zone, FloorCase load, int window) {
        int last = zone.x1() - window;
        IntStream edges = IntStream.concat(Arrays.stream(load.x0()), Arrays.stream(load.x1()));
        return IntStream.concat(
                        IntStream.of(zone.x0(), last),
                        edges.flatMap(edge -> IntStream.of(edge, edge - window))
                                .filter(start -> start > zone.x0() && start < last))
                .toArray();
    }

    /** Cost: linear in the number of patches. */
    static StripLoad heaviest(Rect zone, FloorCase load, double[] loads) {
        return ramp(zone, load, loads).heaviest(zone, Math.min(Lengths.M, zone.x1() - zone.x0()));
    }

    private static Ramp ramp(Rect zone, FloorCase load, double[] loads) {
        Ramp ramp = new Ramp(2 * load.patches());
        for (int edge : load.edgesX()) {
            int k = edge >> 1;
            double width = Math.min(load.y1()[k], zone.y1()) - (double) Math.max(load.y0()[k], zone.y0());
            int low = Math.max(load.x0()[k], zone.x0());
            int high = Math.min(load.x1()[k], zone.x1());
            if (width > 0 && high > low) {
                double perUm = loads[k] * (width / (load.y1()[k] - load.y0()[k])) / (load.x1()[k] - load.x0()[k]);
                boolean begins = (edge & 1) == 0;
                ramp.add(begins ? low : high, begins, begins ? perUm : -perUm);
            }
        }
        return ramp;
    }

    /** What stands before each place along the zone: linear between events. */
    private static final class Ramp {
        private final int[] at;
        private final boolean[] begins;
        private final double[] before;
        private final double[] perUm;
        private int count;

        Ramp(int most) {
            at = new int[most];
            begins = new boolean[most];
            before = new double[most];
            perUm = new double[most];
        }

        void add(int place, boolean patchBegins, double change) {
            at[count] = place;
            begins[count] = patchBegins;
            before[count] = count == 0 ? 0 : before[count - 1] + perUm[count - 1] * (place - at[count - 1]);
            perUm[count] = (count == 0 ? 0 : perUm[count - 1]) + change;
            count++;
        }

        StripLoad heaviest(Rect zone, int window) {
            int last = zone.x1() - window;
            double most = 0;
            int from = zone.x0();
            int ahead = 0;
            int behind = 0;
            for (int i = 0; i < count; i++) {
                int start = begins[i] ? at[i] : at[i] - window;
                if (start < zone.x0() || start > last) {
                    continue;
                }
                double kg;
                if (begins[i]) {
                    ahead = upTo(start + window, Math.max(ahead, i));
                    kg = value(start + window, ahead) - before[i];
                } else {
                    behind = upTo(start, behind);
                    kg = before[i] - value(start, behind);
                }
                if (kg > most) {
                    most = kg;
                    from = start;
                }
            }
            StripLoad inner = new StripLoad(most, from);
            return better(better(inner, zone.x0(), window), last, window);
        }

        double within(int start, int window) {
            return count == 0 ? 0 : value(start + window, upTo(start + window, 0)) - value(start, upTo(start, 0));
        }

        private StripLoad better(StripLoad most, int start, int window) {
            double kg = within(start, window);
            return kg > most.kg() ? new StripLoad(kg, start) : most;
        }

        /** The last event at or before a place, looking on from an event. */
        private int upTo(int place, int event) {
            int found = event;
            while (found + 1 < count && at[found + 1] <= place) {
                found++;
            }
            return found;
        }

        private double value(int place, int event) {
            return place <= at[0] ? 0 : before[event] + perUm[event] * (place - at[event]);
        }
    }
}
