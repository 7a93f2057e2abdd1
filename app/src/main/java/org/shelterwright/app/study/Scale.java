package org.shelterwright.app.study;

import java.util.ArrayList;
import java.util.List;

/**
 * A straight scale between two figures, with marks at round ones: 1, 2 or 5 times a power of ten apart.
 *
 * @param low figure at the beginning, a mark
 * @param high figure at the end, a mark
 * @param step from mark to mark
 */
record Scale(double low, double high, double step) {
    private static final int MOST_MARKS = 7;

    /** The scale that holds all figures; a single figure gets room on both sides. */
    static Scale over(double least, double most) {
        double from = least;
        double to = most;
        if (to - from < 1e-9 * Math.max(1, Math.abs(to))) {
            double room = Math.max(1e-3, Math.abs(to) * 0.01);
            from -= room;
            to += room;
        }
        double raw = (to - from) / (MOST_MARKS - 1);
        double power = Math.pow(10, Math.floor(Math.log10(raw)));
        double step = power;
        for (double factor : new double[] {1, 2, 5, 10}) {
            step = factor * power;
            if (step >= raw * (1 - 1e-9)) {
                break;
            }
        }
        return new Scale(Math.floor(from / step + 1e-9) * step, Math.ceil(to / step - 1e-9) * step, step);
    }

    /** The scale that holds all counts: marks are whole, and there is one beyond each end if they are few. */
    static Scale ofCounts(double least, double most) {
        Scale plain = over(least, most);
        if (plain.step > 1) {
            return plain;
        }
        return new Scale(least == 0 ? 0 : least - 1, most + 1, 1);
    }

    List<Double> marks() {
        List<Double> marks = new ArrayList<>();
        long count = Math.round((high - low) / step);
        for (long i = 0; i <= count; i++) {
            marks.add(low + i * step);
        }
        return marks;
    }

    /** Decimals that tell the marks apart. */
    int decimals() {
        return Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
    }

    /** Where a figure lies from 0 (low) to 1 (high). */
    double share(double value) {
        return (value - low) / (high - low);
    }
}
