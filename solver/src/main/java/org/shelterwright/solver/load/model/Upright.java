package org.shelterwright.solver.load.model;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.space.Size;

/**
 * Which edges of a piece may stand upright; about the upright edge it may always turn.
 *
 * @param x the edge along its own x
 * @param y the edge along its own y
 * @param z the edge along its own z
 */
public record Upright(boolean x, boolean y, boolean z) {
    public static final Upright ANY = new Upright(true, true, true);
    /** "This side up". */
    public static final Upright AS_IS = new Upright(false, false, true);

    public Upright {
        if (!x && !y && !z) {
            throw new IllegalArgumentException("At least one edge of a piece must be allowed to stand upright.");
        }
    }

    /** The different sizes along the axes of the room in which a piece may stand, in a fixed order. */
    public List<Size> stances(Size size) {
        List<Size> stances = new ArrayList<>();
        if (z) {
            both(stances, size.x(), size.y(), size.z());
        }
        if (y) {
            both(stances, size.x(), size.z(), size.y());
        }
        if (x) {
            both(stances, size.y(), size.z(), size.x());
        }
        return List.copyOf(stances);
    }

    private static void both(List<Size> stances, int a, int b, int upright) {
        for (Size stance : List.of(new Size(a, b, upright), new Size(b, a, upright))) {
            if (!stances.contains(stance)) {
                stances.add(stance);
            }
        }
    }
}
