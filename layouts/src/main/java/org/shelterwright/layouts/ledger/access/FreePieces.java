package org.shelterwright.layouts.ledger.access;

import java.util.Arrays;

/**
 * The maximal free rectangles of a floor, found as {@link FreeFloor} finds them, for the search, which asks often: in arrays that are
 * reused, and without those that are narrower than the narrowest square of interest. Not for several threads.
 */
final class FreePieces {
    /** Low and high ends of the pieces (µm). */
    int[] x0 = new int[64];

    int[] y0 = new int[64];
    int[] x1 = new int[64];
    int[] y1 = new int[64];

    private final int roomX;
    private final int roomY;
    private final int least;
    private int count;
    private int[] below = new int[16];
    private int belowCount;

    /** Each stretch has its ends and the height from which on these ends hold. */
    private int[] stretches = new int[96];

    private int[] shorter = new int[96];
    private int length;

    /**
     * For floors from the origin to a corner.
     *
     * @param least width of the narrowest square that matters (µm), above zero
     */
    FreePieces(int roomX, int roomY, int least) {
        this.roomX = roomX;
        this.roomY = roomY;
        this.least = least;
    }

    int count() {
        return count;
    }

    /** Finds the pieces between obstacles. Cost: levels times obstacles. */
    void find(FloorObstacles obstacles) {
        count = 0;
        if (roomX < least) {
            return;
        }
        if (below.length < obstacles.count()) {
            below = new int[2 * obstacles.count()];
        }
        rise(obstacles, 0);
        for (int i = 0; i < obstacles.count(); i++) {
            if (obstacles.y1[i] <= roomY - least && obstacles.firstAtItsEnd(i)) {
                rise(obstacles, obstacles.y1[i]);
            }
        }
    }

    /** Finds all pieces whose low edge is at the level. */
    private void rise(FloorObstacles obstacles, int level) {
        belowCount = obstacles.endingAt(level, below);
        length = 0;
        keep(obstacles, 0, roomX, level, level);
        swap();
        for (int i = 0; i < obstacles.count() && length > 0; i++) {
            if (obstacles.y1[i] > level) {
                cut(obstacles, i, level);
            }
        }
        for (int i = 0; i < length; i += 3) {
            add(stretches[i], level, stretches[i + 1], roomY);
        }
    }

    /** Cuts an obstacle out of the stretches. A piece that stops at the height from which its ends hold could still grow sideways. */
    private void cut(FloorObstacles obstacles, int obstacle, int level) {
        int left = obstacles.x0[obstacle];
        int right = obstacles.x1[obstacle];
        int low = obstacles.y0[obstacle];
        if (!meets(left, right)) {
            return;
        }
        int before = length;
        length = 0;
        for (int i = 0; i < before; i += 3) {
            int from = stretches[i];
            int to = stretches[i + 1];
            if (left >= to || right <= from) {
                put(from, to, stretches[i + 2]);
            } else {
                if (low > stretches[i + 2]) {
                    add(from, level, to, low);
                }
                int since = Math.max(level, low);
                keep(obstacles, from, left, since, level);
                keep(obstacles, right, to, since, level);
            }
        }
        swap();
    }

    private boolean meets(int left, int right) {
        for (int i = 0; i < length; i += 3) {
            if (left < stretches[i + 1] && right > stretches[i]) {
                return true;
            }
        }
        return false;
    }

    /** Keeps a stretch that is wide enough and closed from below. */
    private void keep(FloorObstacles obstacles, int from, int to, int since, int level) {
        if (to - from < least) {
            return;
        }
        boolean closed = level == 0;
        for (int i = 0; i < belowCount && !closed; i++) {
            closed = obstacles.x0[below[i]] < to && obstacles.x1[below[i]] > from;
        }
        if (closed) {
            put(from, to, since);
        }
    }

    private void put(int from, int to, int since) {
        if (length + 3 > shorter.length) {
            shorter = Arrays.copyOf(shorter, 2 * shorter.length);
        }
        shorter[length] = from;
        shorter[length + 1] = to;
        shorter[length + 2] = since;
        length += 3;
    }

    private void swap() {
        int[] kept = shorter;
        shorter = stretches;
        stretches = kept;
    }

    private void add(int left, int low, int right, int high) {
        if (high - low < least) {
            return;
        }
        if (count == x0.length) {
            x0 = Arrays.copyOf(x0, 2 * count);
            y0 = Arrays.copyOf(y0, 2 * count);
            x1 = Arrays.copyOf(x1, 2 * count);
            y1 = Arrays.copyOf(y1, 2 * count);
        }
        x0[count] = left;
        y0[count] = low;
        x1[count] = right;
        y1[count] = high;
        count++;
    }
}
