package org.shelterwright.solver.route.drop;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Point;

/**
 * Where a drop ends: anywhere on a line of straights along the axes, or at one point.
 *
 * @param path corners of the line; a single point for a port
 * @param tray whether the cable turns into it, so that the corner there needs room
 */
public record Target(List<Point> path, boolean tray) {
    public Target {
        path = List.copyOf(path);
    }

    public static Target port(Point at) {
        return new Target(List.of(at), false);
    }

    /** A place on a tray. */
    public static Target place(Point at) {
        return new Target(List.of(at), true);
    }

    /** Distance along the axes from a point to the line (µm). */
    public int distance(Point from) {
        return distance(from.x(), from.y(), from.z());
    }

    int distance(int x, int y, int z) {
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < path.size(); i++) {
            Point a = path.get(i);
            Point b = path.get(Math.max(0, i - 1));
            least = Math.min(least, off(x, a.x(), b.x()) + off(y, a.y(), b.y()) + off(z, a.z(), b.z()));
        }
        return least;
    }

    /** The axis along which the line runs at a point; {@code null} of a single point. */
    @Nullable
    Axis along(int x, int y, int z) {
        for (int i = 1; i < path.size(); i++) {
            Point a = path.get(i - 1);
            Point b = path.get(i);
            if (off(x, a.x(), b.x()) + off(y, a.y(), b.y()) + off(z, a.z(), b.z()) == 0) {
                return a.x() != b.x() ? Axis.X : a.y() != b.y() ? Axis.Y : Axis.Z;
            }
        }
        return null;
    }

    static int off(int value, int a, int b) {
        return Math.max(0, Math.max(Math.min(a, b) - value, value - Math.max(a, b)));
    }
}
