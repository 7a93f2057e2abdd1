package org.shelterwright.catalog.body;

import java.util.List;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Millimetres;
import org.shelterwright.catalog.space.Point;

/**
 * Holes in rows: a rail (one row) or a grid of inserts.
 *
 * @param first the hole with the lowest coordinates, in the frame of the body
 * @param along axis along which holes follow each other
 * @param pitch distance between holes along the row (µm)
 * @param count holes in a row
 * @param rowPitch distance between rows, on the other axis of the surface (µm); any value above zero if there is one row
 * @param rows number of rows
 */
public record HoleGrid(
        String name,
        Face surface,
        Point first,
        Axis along,
        @Millimetres int pitch,
        int count,
        @Millimetres int rowPitch,
        int rows,
        List<String> threads,
        Strength strength)
        implements HardPoint {
    private static final int MOST_HOLES = 100_000;

    public HoleGrid {
        threads = List.copyOf(threads);
        if (along == surface.axis()) {
            throw new IllegalArgumentException("The holes of \"" + name + "\" must follow each other in its surface.");
        }
        if (pitch <= 0 || rowPitch <= 0) {
            throw new IllegalArgumentException("The pitch of \"" + name + "\" must be above zero, but is "
                    + Lengths.format(Math.min(pitch, rowPitch)) + " mm.");
        }
        if (count < 1 || rows < 1 || (long) count * rows > MOST_HOLES) {
            throw new IllegalArgumentException("\"" + name + "\" must have 1 to " + MOST_HOLES + " holes.");
        }
    }

    /** The axis across the rows, in the surface. */
    public Axis across() {
        for (Axis axis : Axis.values()) {
            if (axis != along && axis != surface.axis()) {
                return axis;
            }
        }
        throw new IllegalStateException("A surface has two axes.");
    }

    /** The place of a hole; holes and rows are counted from zero. */
    public Point hole(int index, int row) {
        return first.with(along, first.along(along) + index * pitch)
                .with(across(), first.along(across()) + row * rowPitch);
    }

    @Override
    public boolean takes(Point at) {
        return at.along(surface.axis()) == first.along(surface.axis())
                && onPitch(at.along(along) - first.along(along), pitch, count)
                && onPitch(at.along(across()) - first.along(across()), rowPitch, rows);
    }

    @Override
    public Box outline() {
        return Box.between(first, hole(count - 1, rows - 1));
    }

    private static boolean onPitch(int offset, int pitch, int count) {
        return offset >= 0 && offset % pitch == 0 && offset / pitch < count;
    }
}
