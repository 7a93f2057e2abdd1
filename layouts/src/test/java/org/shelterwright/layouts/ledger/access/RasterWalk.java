package org.shelterwright.layouts.ledger.access;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.shelterwright.catalog.space.Rect;

/**
 * The slow twin of the walkway: floods the places of the low corner of the square on a raster of half units with plain
 * overlap tests. On whole coordinates this is the exact truth.
 */
final class RasterWalk {
    private final Rect room;
    private final List<Rect> obstacles;
    private final int width;
    private final boolean[][] seen;
    private final Deque<int[]> open = new ArrayDeque<>();

    /** All in whole units; the raster has two steps in a unit. */
    RasterWalk(Rect room, List<Rect> obstacles, int width, List<Rect> rearDoors) {
        this.room = room;
        this.obstacles = obstacles;
        this.width = width;
        seen = new boolean[2 * room.x1() + 1][2 * room.y1() + 1];
        for (Rect door : rearDoors) {
            for (int y = 2 * door.y0(); y <= 2 * (door.y1() - width); y++) {
                visit(0, y);
            }
        }
        while (!open.isEmpty()) {
            int[] at = open.remove();
            visit(at[0] - 1, at[1]);
            visit(at[0] + 1, at[1]);
            visit(at[0], at[1] - 1);
            visit(at[0], at[1] + 1);
        }
    }

    boolean reaches(Rect target) {
        for (int x = 0; x < seen.length; x++) {
            for (int y = 0; y < seen[0].length; y++) {
                if (seen[x][y] && stands(x, y, target)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean stands(int x, int y, Rect target) {
        boolean squareX = square(x, 2 * target.x0(), 2 * target.x1());
        boolean squareY = square(y, 2 * target.y0(), 2 * target.y1());
        boolean meetsX = x <= 2 * target.x1() && x + 2 * width >= 2 * target.x0();
        boolean meetsY = y <= 2 * target.y1() && y + 2 * width >= 2 * target.y0();
        return squareX && meetsY || squareY && meetsX;
    }

    private boolean square(int at, int from, int to) {
        boolean within = at >= from && at + 2 * width <= to;
        boolean across = at <= from && at + 2 * width >= to;
        return within || across;
    }

    private void visit(int x, int y) {
        if (x < 0 || y < 0 || x + 2 * width > 2 * room.x1() || y + 2 * width > 2 * room.y1() || seen[x][y]) {
            return;
        }
        for (Rect o : obstacles) {
            if (x < 2 * o.x1() && x + 2 * width > 2 * o.x0() && y < 2 * o.y1() && y + 2 * width > 2 * o.y0()) {
                return;
            }
        }
        seen[x][y] = true;
        open.add(new int[] {x, y});
    }
}
