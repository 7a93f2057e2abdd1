package org.shelterwright.app.desk.window;

import java.util.Arrays;
import java.util.Locale;

/** Durations of steps that are alike (ms). */
final class Steps {
    private final double[] ms;
    private int count;

    Steps(int most) {
        ms = new double[most];
    }

    void add(double duration) {
        if (count < ms.length) {
            ms[count++] = duration;
        }
    }

    /** A line of a table in Markdown: how many, the median, the 95th percentile, and the longest. */
    String row(String what) {
        double[] sorted = Arrays.copyOf(ms, count);
        Arrays.sort(sorted);
        return count == 0
                ? "| " + what + " | 0 | - | - | - |"
                : String.format(
                        Locale.ROOT,
                        "| %s | %d | %.1f | %.1f | %.1f |",
                        what,
                        count,
                        sorted[(count - 1) / 2],
                        sorted[Math.min(count - 1, (int) Math.ceil(count * 0.95) - 1)],
                        sorted[count - 1]);
    }
}
