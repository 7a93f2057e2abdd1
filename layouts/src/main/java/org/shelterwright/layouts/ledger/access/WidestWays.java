package org.shelterwright.layouts.ledger.access;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.space.Rect;

/**
 * The widest square that can be slid, without turning, from a way in to each place of a floor: exact, for every target at
 * once.
 *
 * <p>Idea: a square is free exactly if it lies in a maximal free rectangle, and it passes from one to another exactly if
 * it fits into what both share. So the widest way is the path with the greatest least width in the graph of these
 * rectangles, found as a tree grown from the way in (Prim's rule on the widest edge). Cost: the square of the number of
 * rectangles. A way for a wider square is always a way for a narrower one.
 */
final class WidestWays {
    private static final int NOWHERE = -1;

    private final List<Rect> free;
    private final int[] best;
    private final int[] before;
    private final List<WayIn> waysIn;

    /** An answer: the width (µm), zero if there is no way, and the rectangle in which it is narrowest. */
    record Way(int width, Rect narrowest) {}

    /**
     * Grows the ways from all ways in.
     *
     * @param free the maximal free rectangles of the floor
     */
    WidestWays(List<Rect> free, List<WayIn> waysIn) {
        this.free = free;
        this.waysIn = waysIn;
        best = new int[free.size()];
        before = new int[free.size()];
        Arrays.fill(before, NOWHERE);
        for (int i = 0; i < best.length; i++) {
            for (WayIn way : waysIn) {
                best[i] = Math.max(best[i], way.widest(free.get(i)));
            }
        }
        grow();
    }

    private void grow() {
        boolean[] done = new boolean[best.length];
        for (int round = 0; round < best.length; round++) {
            int next = NOWHERE;
            for (int i = 0; i < best.length; i++) {
                if (!done[i] && best[i] > 0 && (next == NOWHERE || best[i] > best[next])) {
                    next = i;
                }
            }
            if (next == NOWHERE) {
                return;
            }
            done[next] = true;
            Rect from = free.get(next);
            for (int i = 0; i < best.length; i++) {
                if (!done[i]) {
                    int through = Math.min(best[next], shared(from, free.get(i)));
                    if (through > best[i]) {
                        best[i] = through;
                        before[i] = next;
                    }
                }
            }
        }
    }

    /** The widest way to stand squarely in or at a rectangle of the floor, as told by {@link #standing}. */
    Way to(Rect target) {
        int width = 0;
        int at = NOWHERE;
        for (int i = 0; i < best.length; i++) {
            int here = Math.min(best[i], standing(free.get(i), target));
            if (here > width) {
                width = here;
                at = i;
            }
        }
        return new Way(width, at == NOWHERE ? target : narrowest(at, width, target));
    }

    private Rect narrowest(int at, int width, Rect target) {
        if (best[at] > width) {
            return target;
        }
        int here = at;
        while (before[here] != NOWHERE) {
            int from = before[here];
            if (best[from] > width) {
                return narrow(here, width)
                        .orElse(narrow(from, width).orElse(intersection(free.get(from), free.get(here))));
            }
            here = from;
        }
        return narrow(here, width).orElse(wayInto(here, width));
    }

    /** A rectangle, if it is itself as narrow as the way. */
    private Optional<Rect> narrow(int index, int width) {
        Rect rect = free.get(index);
        return Optional.of(rect).filter(r -> Math.min(r.x1() - r.x0(), r.y1() - r.y0()) == width);
    }

    private Rect wayInto(int index, int width) {
        for (WayIn way : waysIn) {
            if (way.widest(free.get(index)) == width) {
                return way.area();
            }
        }
        return free.get(index);
    }

    /**
     * The widest square within a free rectangle that stands squarely in or at a target: on one axis within the target or
     * across all of it, on the other sharing or touching it.
     */
    static int standing(Rect free, Rect target) {
        int wide = 0;
        if (free.y0() <= target.y1() && free.y1() >= target.y0()) {
            int alongX = square(free.x0(), free.x1(), target.x0(), target.x1());
            wide = Math.min(alongX, free.y1() - free.y0());
        }
        if (free.x0() <= target.x1() && free.x1() >= target.x0()) {
            int alongY = square(free.y0(), free.y1(), target.y0(), target.y1());
            wide = Math.max(wide, Math.min(alongY, free.x1() - free.x0()));
        }
        return wide;
    }

    private static int square(int from, int to, int targetFrom, int targetTo) {
        if (from <= targetFrom && to >= targetTo) {
            return to - from;
        }
        return Math.max(0, Math.min(to, targetTo) - Math.max(from, targetFrom));
    }

    private static int shared(Rect a, Rect b) {
        int dx = Math.min(a.x1(), b.x1()) - Math.max(a.x0(), b.x0());
        int dy = Math.min(a.y1(), b.y1()) - Math.max(a.y0(), b.y0());
        return Math.max(0, Math.min(dx, dy));
    }

    private static Rect intersection(Rect a, Rect b) {
        return new Rect(
                Math.max(a.x0(), b.x0()), Math.max(a.y0(), b.y0()), Math.min(a.x1(), b.x1()), Math.min(a.y1(), b.y1()));
    }
}
