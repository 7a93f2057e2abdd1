package org.shelterwright.layouts.ledger.access;

/**
 * The widest square that can be slid, without turning, from ways in to places of a level floor with rectangular obstacles: what {@link
 * WidestWays} answers, exact as it is, for the search, which asks it often. In arrays that are reused, and only as far as wide ways
 * matter. Not for several threads.
 *
 * <p>Use: {@link #floor}, then {@link #from}, then {@link #widest}.
 */
public final class WayWidths {
    private final int roomX;
    private final int roomY;
    private final int least;
    private final FreePieces pieces;
    private FloorObstacles obstacles = new FloorObstacles();
    private FloorObstacles last = new FloorObstacles();
    private boolean any;

    /** Best way to each piece so far (µm). */
    private int[] best = new int[64];

    /** The pieces that can be reached, those with the widest way first, then those still waiting. */
    private int[] order = new int[64];

    private int reached;

    /**
     * For floors of one size.
     *
     * @param roomX extent of the floor along x (µm), from zero
     * @param roomY extent of the floor along y (µm), from zero
     * @param least width of the narrowest square that matters (µm), above zero
     */
    public WayWidths(int roomX, int roomY, int least) {
        this.roomX = roomX;
        this.roomY = roomY;
        this.least = least;
        this.pieces = new FreePieces(roomX, roomY, least);
    }

    /**
     * Takes a floor. Cost: the square of the obstacles that lie in no other one, nothing if they are those of the last time.
     *
     * @param rects x0, y0, x1, y1 of each obstacle (µm); it may hold more than are used
     * @param number number of obstacles
     * @return whether it differs from the floor before; if not, the ways are still those found last
     */
    public boolean floor(int[] rects, int number) {
        FloorObstacles next = last;
        next.take(rects, number, roomX, roomY);
        if (any && next.same(obstacles)) {
            return false;
        }
        last = obstacles;
        obstacles = next;
        any = true;
        pieces.find(obstacles);
        return true;
    }

    /**
     * Grows the ways from some ways in (Prim's rule on the widest edge). Cost: the square of the number of free rectangles.
     *
     * @param doors x0, y0, x1, y1 of each opening in a wall, seen from above: without extent across the wall; the square starts where
     *     it touches the wall within one of them
     * @param first index of the first door's first figure
     * @param end index behind the last door's last figure
     */
    public void from(int[] doors, int first, int end) {
        int count = pieces.count();
        if (best.length < count) {
            best = new int[2 * count];
            order = new int[2 * count];
        }
        int at = 0;
        for (int i = 0; i < count; i++) {
            int wide = 0;
            for (int d = first; d < end; d += 4) {
                wide = Math.max(wide, through(doors, d, i));
            }
            order[i] = i;
            best[i] = wide;
            at = wide > best[at] ? i : at;
        }
        reached = 0;
        while (reached < count && best[order[at]] >= least) {
            int next = order[at];
            order[at] = order[reached];
            order[reached++] = next;
            at = spread(next, count);
        }
    }

    /** Widens the ways to the pieces still waiting by those that come through another; gives the place of the widest in their order. */
    private int spread(int from, int count) {
        int most = best[from];
        int left = pieces.x0[from];
        int low = pieces.y0[from];
        int right = pieces.x1[from];
        int high = pieces.y1[from];
        int widest = -1;
        int at = reached;
        for (int k = reached; k < count; k++) {
            int i = order[k];
            int wide = best[i];
            if (wide < most) {
                int dx = Math.min(right, pieces.x1[i]) - Math.max(left, pieces.x0[i]);
                int dy = Math.min(high, pieces.y1[i]) - Math.max(low, pieces.y0[i]);
                int shared = Math.min(most, Math.min(dx, dy));
                if (shared > wide) {
                    best[i] = shared;
                    wide = shared;
                }
            }
            if (wide > widest) {
                widest = wide;
                at = k;
            }
        }
        return at;
    }

    /** The widest square in a piece that touches the wall within an opening; zero if none. */
    private int through(int[] doors, int d, int i) {
        int sharedX = Math.min(pieces.x1[i], doors[d + 2]) - Math.max(pieces.x0[i], doors[d]);
        int sharedY = Math.min(pieces.y1[i], doors[d + 3]) - Math.max(pieces.y0[i], doors[d + 1]);
        if (sharedX < 0 || sharedY < 0) {
            return 0;
        }
        return doors[d] == doors[d + 2]
                ? Math.min(sharedY, pieces.x1[i] - pieces.x0[i])
                : Math.min(sharedX, pieces.y1[i] - pieces.y0[i]);
    }

    /**
     * The widest way to an area: the square stands squarely in or at it, that is on one axis within it or across all of it, on the
     * other sharing or touching it.
     *
     * @param areas x0, y0, x1, y1 of areas (µm)
     * @param at index of the first figure of this one
     * @param enough a wider way is not looked for
     * @return its width (µm), possibly less than it is if that is more than enough; zero if it is narrower than the least
     */
    public int widest(int[] areas, int at, int enough) {
        int left = areas[at];
        int low = areas[at + 1];
        int right = areas[at + 2];
        int high = areas[at + 3];
        int found = 0;
        for (int k = 0; k < reached && found < enough; k++) {
            int i = order[k];
            if (best[i] <= found) {
                return found;
            }
            int fromX = pieces.x0[i];
            int fromY = pieces.y0[i];
            int toX = pieces.x1[i];
            int toY = pieces.y1[i];
            int wide = 0;
            if (fromY <= high && toY >= low) {
                wide = Math.min(square(fromX, toX, left, right), toY - fromY);
            }
            if (fromX <= right && toX >= left) {
                wide = Math.max(wide, Math.min(square(fromY, toY, low, high), toX - fromX));
            }
            found = Math.max(found, Math.min(wide, best[i]));
        }
        return found < least ? 0 : found;
    }

    private static int square(int from, int to, int areaFrom, int areaTo) {
        return from <= areaFrom && to >= areaTo ? to - from : Math.min(to, areaTo) - Math.max(from, areaFrom);
    }
}
