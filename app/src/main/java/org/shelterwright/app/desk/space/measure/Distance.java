package org.shelterwright.app.desk.space.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

/**
 * A distance that was taken.
 *
 * @param words such as "742, face to face"
 */
public record Distance(Point from, Point to, String words) {
    /**
     * The distance between two marks: square to the faces between parallel faces, square to the face between a corner and a
     * face, straight otherwise.
     */
    public static Distance between(Mark a, Mark b) {
        Face face = a.face() == null ? b.face() : a.face();
        boolean square = face != null
                && (a.face() == null
                        || b.face() == null
                        || a.face().axis() == b.face().axis());
        if (square && face != null) {
            Axis axis = face.axis();
            Mark foot = a.face() == null ? a : b;
            Mark plane = a.face() == null ? b : a;
            Point from = foot.at();
            Point to = from.with(axis, plane.at().along(axis));
            String how = a.face() != null && b.face() != null ? "face to face" : "corner to face";
            return new Distance(from, to, Numerals.mm(Math.abs(to.along(axis) - from.along(axis))) + ", " + how);
        }
        return straight(a.at(), b.at(), "point to point");
    }

    /** The shortest distance between two units; {@code null} if one of them has no solid. */
    public static @Nullable Distance nearest(List<Box> a, List<Box> b) {
        Distance best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Box one : a) {
            for (Box other : b) {
                Point from = new Point(near(one, other, Axis.X), near(one, other, Axis.Y), near(one, other, Axis.Z));
                Point to = new Point(near(other, one, Axis.X), near(other, one, Axis.Y), near(other, one, Axis.Z));
                double length = length(from, to);
                if (length < least) {
                    least = length;
                    best = straight(from, to, "nearest");
                }
            }
        }
        return best;
    }

    /** Place on a cuboid's axis that is nearest to another; the middle of what both share. */
    private static int near(Box box, Box other, Axis axis) {
        int low = Math.max(box.low(axis), other.low(axis));
        int high = Math.min(box.high(axis), other.high(axis));
        if (low <= high) {
            return low + (high - low) / 2;
        }
        return box.high(axis) < other.low(axis) ? box.high(axis) : box.low(axis);
    }

    private static Distance straight(Point a, Point b, String how) {
        StringBuilder words = new StringBuilder(Numerals.mm((int) Math.round(length(a, b) / 1000) * 1000));
        if (exact(a, b)) {
            words = new StringBuilder(Numerals.mm((int) Math.round(length(a, b))));
        }
        words.append(", ").append(how);
        String parts = parts(a, b);
        return new Distance(a, b, parts.isEmpty() ? words.toString() : words + " (" + parts + ")");
    }

    /** Shares along the axes, if there is more than one. */
    private static String parts(Point a, Point b) {
        StringBuilder parts = new StringBuilder();
        for (Axis axis : Axis.values()) {
            int way = Math.abs(b.along(axis) - a.along(axis));
            if (way > 0) {
                parts.append(parts.isEmpty() ? "" : ", ")
                        .append(axis.name().toLowerCase(java.util.Locale.ROOT))
                        .append(' ')
                        .append(Numerals.mm(way));
            }
        }
        return exact(a, b) ? "" : parts.toString();
    }

    /** Whether both lie on one line along an axis. */
    private static boolean exact(Point a, Point b) {
        int differ = 0;
        for (Axis axis : Axis.values()) {
            differ += a.along(axis) == b.along(axis) ? 0 : 1;
        }
        return differ < 2;
    }

    private static double length(Point a, Point b) {
        return Math.sqrt(Math.pow((double) a.x() - b.x(), 2)
                + Math.pow((double) a.y() - b.y(), 2)
                + Math.pow((double) a.z() - b.z(), 2));
    }
}
