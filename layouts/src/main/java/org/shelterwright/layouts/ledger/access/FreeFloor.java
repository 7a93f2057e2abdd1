package org.shelterwright.layouts.ledger.access;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.shelterwright.catalog.space.Rect;

/**
 * The free part of a floor as its maximal free rectangles: those that hold no part of an obstacle and cannot be made
 * longer on any side. A square is free exactly if it lies in one of them.
 *
 * <p>Idea: over each level at which something ends (the floor's edge or an obstacle's high edge) the free stretches of x
 * are carried upward; where an obstacle cuts one, it is a maximal rectangle if something closes it from below. Cost: about
 * obstacles times levels. Literature: the enumeration of maximal empty rectangles goes back to Naamad, Lee and Hsu, "On
 * the maximum empty rectangle problem", Discrete Applied Mathematics 8 (1984) (from memory).
 */
final class FreeFloor {
    private final Rect floor;
    private final List<Rect> obstacles;
    private final List<Rect> free = new ArrayList<>();

    private FreeFloor(Rect floor, List<Rect> obstacles) {
        this.floor = floor;
        this.obstacles = obstacles;
    }

    /** The maximal free rectangles; obstacles that do not overlap the floor change nothing. */
    static List<Rect> of(Rect floor, List<Rect> obstacles) {
        List<Rect> sorted = new ArrayList<>();
        for (Rect obstacle : obstacles) {
            if (obstacle.overlaps(floor)) {
                sorted.add(obstacle);
            }
        }
        sorted.sort((a, b) -> Integer.compare(a.y0(), b.y0()));
        FreeFloor search = new FreeFloor(floor, sorted);
        int[] levels = sorted.stream()
                .mapToInt(Rect::y1)
                .filter(y -> y < floor.y1())
                .sorted()
                .distinct()
                .toArray();
        search.rise(floor.y0());
        for (int level : levels) {
            search.rise(level);
        }
        return search.free;
    }

    /** Finds all maximal rectangles whose low edge is at the level. */
    private void rise(int level) {
        List<Rect> below = new ArrayList<>();
        List<Rect> above = new ArrayList<>();
        for (Rect obstacle : obstacles) {
            if (obstacle.y1() == level) {
                below.add(obstacle);
            } else if (obstacle.y1() > level) {
                above.add(obstacle);
            }
        }
        boolean atEdge = level == floor.y0();
        int[] stretches = {floor.x0(), floor.x1(), level};
        for (Rect obstacle : above) {
            if (stretches.length == 0) {
                return;
            }
            stretches = cut(stretches, obstacle, level, below, atEdge);
        }
        for (int i = 0; i < stretches.length; i += 3) {
            if (closedBelow(stretches[i], stretches[i + 1], below, atEdge)) {
                free.add(new Rect(stretches[i], level, stretches[i + 1], floor.y1()));
            }
        }
    }

    /**
     * Cuts an obstacle out of the stretches. Each has its ends and the height from which on these ends hold: a rectangle
     * that stops at that height could still grow sideways.
     */
    private int[] cut(int[] stretches, Rect obstacle, int level, List<Rect> below, boolean atEdge) {
        int[] left = new int[stretches.length + 3];
        int count = 0;
        for (int i = 0; i < stretches.length; i += 3) {
            int from = stretches[i];
            int to = stretches[i + 1];
            if (obstacle.x0() >= to || obstacle.x1() <= from) {
                System.arraycopy(stretches, i, left, count, 3);
                count += 3;
                continue;
            }
            if (obstacle.y0() > stretches[i + 2] && closedBelow(from, to, below, atEdge)) {
                free.add(new Rect(from, level, to, obstacle.y0()));
            }
            int since = Math.max(level, obstacle.y0());
            if (from < obstacle.x0() && closedBelow(from, obstacle.x0(), below, atEdge)) {
                left = put(left, count, from, obstacle.x0(), since);
                count += 3;
            }
            if (obstacle.x1() < to && closedBelow(obstacle.x1(), to, below, atEdge)) {
                left = put(left, count, obstacle.x1(), to, since);
                count += 3;
            }
        }
        return Arrays.copyOf(left, count);
    }

    private static int[] put(int[] stretches, int count, int from, int to, int since) {
        int[] room = count + 3 > stretches.length ? Arrays.copyOf(stretches, 2 * count + 3) : stretches;
        room[count] = from;
        room[count + 1] = to;
        room[count + 2] = since;
        return room;
    }

    private static boolean closedBelow(int from, int to, List<Rect> below, boolean atEdge) {
        if (atEdge) {
            return true;
        }
        for (Rect obstacle : below) {
            if (obstacle.x0() < to && obstacle.x1() > from) {
                return true;
            }
        }
        return false;
    }
}
