package org.shelterwright.layouts.cable;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Point;

/**
 * The largest radius with which a cable can be laid round the corners of its route. A quarter bend of radius R takes R of the
 * straight before and behind it, so a straight between two corners must have 2 R, and one between a corner and an end R. The
 * bend in a connector is not looked at.
 */
public final class Bends {
    private Bends() {}

    /**
     * The tightest straight.
     *
     * @param radius largest radius that it leaves (µm)
     * @param at the corner before or behind it
     */
    public record Tightest(int radius, Point at) {}

    /** The tightest straight of a path of straights along the axes; {@code null} if it has no corner. */
    public static @Nullable Tightest of(List<Point> path) {
        int last = path.size() - 2;
        Tightest tightest = null;
        for (int leg = 0; leg <= last; leg++) {
            boolean begins = leg > 0;
            boolean ends = leg < last;
            if (begins || ends) {
                int length = distance(path.get(leg), path.get(leg + 1));
                int radius = begins && ends ? length / 2 : length;
                if (tightest == null || radius < tightest.radius()) {
                    tightest = new Tightest(radius, begins ? path.get(leg) : path.get(leg + 1));
                }
            }
        }
        return tightest;
    }

    /** Length of the way from one point to another along the axes (µm). */
    public static int distance(Point a, Point b) {
        return Math.abs(a.x() - b.x()) + Math.abs(a.y() - b.y()) + Math.abs(a.z() - b.z());
    }
}
