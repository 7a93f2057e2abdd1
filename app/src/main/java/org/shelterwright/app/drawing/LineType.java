package org.shelterwright.app.drawing;

import java.util.Arrays;

/**
 * Line types after ISO 128-2, with their dashes and gaps in line widths.
 *
 * <p>Source: ISO 128-2, table 1 and 2 (from memory): gap 3, dot 0.5, dash 12, long dash 24 line widths. Dashes are
 * shortened by half where a standard length would not show on a short line.
 */
public enum LineType {
    /** 01: visible edges, dimension lines, hatching. */
    CONTINUOUS,
    /** 02: hidden edges. */
    DASHED(8, 3),
    /** 04: cutting planes and symmetry. */
    LONG_DASH_DOT(24, 3, 0.5, 3),
    /** 05: swings, service zones, ends of travel, centroid lines. */
    LONG_DASH_DOUBLE_DOT(16, 3, 0.5, 3, 0.5, 3),
    /** Not of the standard: bars and signs of what is not assessed. */
    SHORT_DASHED(2.6, 1.8);

    private final double[] dashes;

    LineType(double... dashes) {
        this.dashes = dashes;
    }

    /** Lengths of dash, gap, dash, gap... on paper; empty for a continuous line. */
    public double[] dashes(double width) {
        return Arrays.stream(dashes).map(length -> length * width).toArray();
    }
}
