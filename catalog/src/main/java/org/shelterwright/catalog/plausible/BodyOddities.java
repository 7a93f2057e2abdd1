package org.shelterwright.catalog.plausible;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.HoleGrid;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;

/** What is odd about a body: bounds from common practice (a 45-foot container is the longest that moves by road). */
public final class BodyOddities {
    private static final int ABSURDLY_SHORT = 300 * Lengths.MM;
    private static final int SHORT = Lengths.M;
    private static final int LONG = 15 * Lengths.M;
    private static final int ABSURDLY_LONG = 30 * Lengths.M;

    private BodyOddities() {}

    public static List<Oddity> of(Body body) {
        List<Oddity> found = new ArrayList<>();
        for (Axis axis : Axis.values()) {
            int length = body.inside().along(axis);
            String what = "The inside " + axis.name().toLowerCase(Locale.ROOT) + " = " + Lengths.format(length)
                    + " mm of body " + body.id();
            if (length < ABSURDLY_SHORT || length > ABSURDLY_LONG) {
                found.add(Oddity.absurd(
                        "inside", what + " is not from 300 mm to 30 m. Lengths are in millimetres: correct it."));
            } else if (length < SHORT || length > LONG) {
                found.add(Oddity.doubtful(
                        "inside", what + " is not from 1 m to 15 m. Lengths are in millimetres: is it right?"));
            }
        }
        for (HoleGrid grid : body.grids()) {
            if (!within(grid, body.outside())) {
                found.add(Oddity.absurd(
                        "grids",
                        "The holes of \"" + grid.name() + "\" of body " + body.id()
                                + " reach beyond its outside. Correct the pitch or the count."));
            }
        }
        if (body.openings().stream().noneMatch(Opening::exit)) {
            found.add(Oddity.doubtful(
                    "openings", "The body " + body.id() + " has no opening by which people leave. Is it right?"));
        }
        return found;
    }

    /** In long numbers, since a wrong pitch may reach beyond the range of coordinates. */
    private static boolean within(HoleGrid grid, Box outside) {
        return outside.contains(grid.first())
                && last(grid, grid.along(), grid.pitch(), grid.count()) <= outside.high(grid.along())
                && last(grid, grid.across(), grid.rowPitch(), grid.rows()) <= outside.high(grid.across());
    }

    private static long last(HoleGrid grid, Axis axis, int pitch, int count) {
        return grid.first().along(axis) + (count - 1L) * pitch;
    }
}
