package org.shelterwright.app.arrangement;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Spot;

/** Which parts of a sheet are taken by texts, rings and leaders, so that no two lie over each other. */
final class FreeSpace {

    private static final double STEP = 1;

    private final Bounds sheet;
    private final List<Bounds> taken = new ArrayList<>();

    FreeSpace(Bounds sheet) {
        this.sheet = sheet;
    }

    void take(Bounds bounds) {
        taken.add(bounds);
    }

    /** Takes the way of a straight line, in small pieces. */
    void take(Spot from, Spot to) {
        walk(from, to).forEach(spot -> take(Bounds.around(spot, STEP, STEP)));
    }

    boolean free(Bounds bounds) {
        return sheet.contains(bounds) && taken.stream().noneMatch(bounds::overlaps);
    }

    /** Whether a straight line meets nothing that is taken. */
    boolean free(Spot from, Spot to) {
        return walk(from, to).stream().allMatch(spot -> free(Bounds.around(spot, STEP / 2, STEP / 2)));
    }

    private static List<Spot> walk(Spot from, Spot to) {
        List<Spot> way = new ArrayList<>();
        int steps = (int) Math.ceil(from.distance(to) / STEP);
        for (int i = 0; i <= steps; i++) {
            way.add(from.towards(to, steps == 0 ? 0 : (double) i / steps));
        }
        return way;
    }
}
