package org.shelterwright.catalog.transit;

import java.util.List;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Millimetres;

/**
 * A corner of the right-hand side of an outline that is the same on both sides.
 *
 * @param height above rail, ground or floor (µm)
 * @param halfWidth from the middle plane (µm)
 */
public record Step(@Millimetres int height, @Millimetres int halfWidth) {
    public Step {
        if (halfWidth < 0) {
            throw new IllegalArgumentException(
                    "The half width of " + Lengths.format(halfWidth) + " mm must be at least 0.");
        }
    }

    static void requireRising(List<Step> steps) {
        for (int i = 1; i < steps.size(); i++) {
            if (steps.get(i).height() < steps.get(i - 1).height()) {
                throw new IllegalArgumentException("The steps of an outline must follow from low to high: "
                        + Lengths.format(steps.get(i).height()) + " mm comes after "
                        + Lengths.format(steps.get(i - 1).height()) + " mm.");
            }
        }
    }

    /**
     * The least half width between two heights (µm); what is outside the steps has none: -1.
     *
     * @param steps from low to high
     */
    public static int leastHalfWidth(List<Step> steps, int low, int high) {
        if (steps.isEmpty()
                || low < steps.get(0).height()
                || high > steps.get(steps.size() - 1).height()) {
            return -1;
        }
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            if (step.height() >= low && step.height() <= high && !only(steps, i, low, high)) {
                least = Math.min(least, step.halfWidth());
            }
            if (i > 0 && (low == high || step.height() > low)) {
                least = Math.min(least, at(steps.get(i - 1), step, low));
            }
            if (i > 0 && (low == high || steps.get(i - 1).height() < high)) {
                least = Math.min(least, at(steps.get(i - 1), step, high));
            }
        }
        return least;
    }

    /** Whether a corner only touches the interval: where a level step begins or ends, the side that is looked at counts. */
    private static boolean only(List<Step> steps, int i, int low, int high) {
        if (low == high) {
            return false;
        }
        int height = steps.get(i).height();
        boolean lowEnd =
                height == low && i + 1 < steps.size() && steps.get(i + 1).height() == height;
        boolean highEnd = height == high && i > 0 && steps.get(i - 1).height() == height;
        return lowEnd || highEnd;
    }

    /** The half width of a sloping side at a height, rounded down; no bound where it does not reach. */
    private static int at(Step a, Step b, int height) {
        if (a.height() == b.height() || height < a.height() || height > b.height()) {
            return Integer.MAX_VALUE;
        }
        long part = (long) (b.halfWidth() - a.halfWidth()) * (height - a.height());
        return a.halfWidth() + (int) Math.floorDiv(part, b.height() - a.height());
    }
}
