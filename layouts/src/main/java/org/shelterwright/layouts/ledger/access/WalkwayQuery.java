package org.shelterwright.layouts.ledger.access;

import java.util.Arrays;

/**
 * Whether a square of a given width can be slid, without turning, from one of several start areas to each of several
 * targets on a level floor with rectangular obstacles: exact, an exact fit is free. For the search, which asks it often;
 * the ledger asks {@link WidestWays}, which answers for every width at once.
 *
 * <p>Idea: the place of the square is that of its low corner, so each obstacle forbids an open rectangle of places, and
 * what is free is a closed set. Along each line of constant x it consists of closed intervals whose low ends lie on the
 * low edge of the room or on the high edge of an obstacle; so it is enough to look at rows at these levels (and at the low
 * edges of starts and targets), to join two neighbouring rows where nothing blocks the strip between them, and to
 * union. Cost: levels times obstacles.
 *
 * <p>Reuses its arrays from call to call. Not for several threads.
 */
public final class WalkwayQuery {
    private long[] keys = new long[64];
    private int[] left = new int[64];
    private int[] right = new int[64];
    private int[] bottom = new int[64];
    private int[] top = new int[64];
    private int[] levels = new int[64];
    private long[] entering = new long[64];
    private long[] leaving = new long[64];
    private long[] active = new long[1];
    private long[] strip = new long[1];
    private int[] rowFirst = new int[65];
    private int[] low = new int[256];
    private int[] high = new int[256];
    private int[] parent = new int[256];
    private int intervals;

    private int width;
    private int obstacleCount;
    private int words;
    private int lastX;

    /**
     * Answers for all targets.
     *
     * @param roomX extent of the floor along x (µm), from zero
     * @param roomY extent of the floor along y (µm), from zero
     * @param personWidth width of the square (µm), above zero
     * @param obstacleRects x0, y0, x1, y1 of each obstacle (µm); it may hold more than are used
     * @param obstacleNumber number of obstacles
     * @param doors x0, y0, x1, y1 of each opening in a wall, seen from above: without extent across the wall; the square
     *     starts where it touches the wall within one of them
     * @param targets x0, y0, x1, y1 of each area to be reached: the square stands squarely in or at it, that is on one
     *     axis within it or across all of it, on the other sharing or touching it
     * @return for each target whether it is reached
     */
    public boolean[] reached(
            int roomX,
            int roomY,
            int personWidth,
            int[] obstacleRects,
            int obstacleNumber,
            int[] doors,
            int[] targets) {
        boolean[] reached = new boolean[targets.length / 4];
        width = personWidth;
        lastX = roomX - personWidth;
        int lastY = roomY - personWidth;
        int[] starts = starts(doors);
        if (lastX < 0 || lastY < 0 || starts.length == 0) {
            return reached;
        }
        int[] standing = standing(targets);
        takeObstacles(obstacleRects, obstacleNumber, lastY);
        int levelCount = findLevels(lastY, starts, standing);
        findEvents(levelCount);
        sweep(levelCount);
        int outside = newInterval(0, 0);
        for (int i = 0; i < starts.length; i += 4) {
            joinStart(starts, i, levelCount, outside);
        }
        for (int i = 0; i < reached.length; i++) {
            reached[i] = meets(standing, 8 * i, levelCount, outside) || meets(standing, 8 * i + 4, levelCount, outside);
        }
        return reached;
    }

    /** The places of the low corner of the square that touch a wall within an opening; none for a narrower opening. */
    private int[] starts(int[] doors) {
        int[] places = new int[doors.length];
        int count = 0;
        for (int i = 0; i < doors.length; i += 4) {
            boolean alongY = doors[i] == doors[i + 2];
            int from = alongY ? doors[i + 1] : doors[i];
            int to = (alongY ? doors[i + 3] : doors[i + 2]) - width;
            int wall = alongY ? doors[i] : doors[i + 1];
            if (from <= to) {
                places[count++] = alongY ? wall - width : from;
                places[count++] = alongY ? from : wall - width;
                places[count++] = alongY ? wall : to;
                places[count++] = alongY ? to : wall;
            }
        }
        return Arrays.copyOf(places, count);
    }

    /** Two areas of places for each target: squarely across it on x, and on y. */
    private int[] standing(int[] targets) {
        int[] places = new int[2 * targets.length];
        for (int i = 0, at = 0; i < targets.length; i += 4) {
            int x0 = targets[i];
            int y0 = targets[i + 1];
            int x1 = targets[i + 2];
            int y1 = targets[i + 3];
            places[at++] = Math.min(x0, x1 - width);
            places[at++] = y0 - width;
            places[at++] = Math.max(x0, x1 - width);
            places[at++] = y1;
            places[at++] = x0 - width;
            places[at++] = Math.min(y0, y1 - width);
            places[at++] = x1;
            places[at++] = Math.max(y0, y1 - width);
        }
        return places;
    }

    /** Keeps the places that obstacles forbid, sorted by their left end, without those that lie in another one. */
    private void takeObstacles(int[] rects, int count, int lastY) {
        if (keys.length < count) {
            keys = new long[2 * count];
            left = new int[2 * count];
            right = new int[2 * count];
            bottom = new int[2 * count];
            top = new int[2 * count];
        }
        for (int i = 0; i < count; i++) {
            keys[i] = ((long) rects[4 * i] << 32) | i;
        }
        Arrays.sort(keys, 0, count);
        int kept = 0;
        for (int i = 0; i < count; i++) {
            int at = 4 * (int) keys[i];
            int x0 = rects[at] - width;
            int y0 = rects[at + 1] - width;
            int x1 = rects[at + 2];
            int y1 = rects[at + 3];
            if (x1 > 0 && y1 > 0 && x0 < lastX && y0 < lastY && !covered(kept, x1, y0, y1)) {
                left[kept] = x0;
                right[kept] = x1;
                bottom[kept] = y0;
                top[kept] = y1;
                kept++;
            }
        }
        obstacleCount = kept;
        words = (kept + 63) / 64;
    }

    private boolean covered(int kept, int x1, int y0, int y1) {
        for (int k = 0; k < kept; k++) {
            if (right[k] >= x1 && bottom[k] <= y0 && top[k] >= y1) {
                return true;
            }
        }
        return false;
    }

    private int findLevels(int lastY, int[] starts, int[] targets) {
        int most = 1 + obstacleCount + starts.length / 4 + targets.length / 4;
        if (levels.length < most) {
            levels = new int[2 * most];
            rowFirst = new int[2 * most + 1];
        }
        int count = 0;
        levels[count++] = 0;
        for (int i = 0; i < obstacleCount; i++) {
            if (top[i] > 0 && top[i] <= lastY) {
                levels[count++] = top[i];
            }
        }
        count = addLowEdges(starts, lastY, count);
        count = addLowEdges(targets, lastY, count);
        Arrays.sort(levels, 0, count);
        int distinct = 1;
        for (int i = 1; i < count; i++) {
            if (levels[i] != levels[distinct - 1]) {
                levels[distinct++] = levels[i];
            }
        }
        return distinct;
    }

    private int addLowEdges(int[] rects, int lastY, int count) {
        int next = count;
        for (int i = 1; i < rects.length; i += 4) {
            if (rects[i] > 0 && rects[i] <= lastY) {
                levels[next++] = rects[i];
            }
        }
        return next;
    }

    /** Notes at which row each obstacle begins to be in the way and at which it no longer is. */
    private void findEvents(int levelCount) {
        int size = (levelCount + 1) * words;
        if (entering.length < size) {
            entering = new long[2 * size];
            leaving = new long[2 * size];
        }
        Arrays.fill(entering, 0, size, 0);
        Arrays.fill(leaving, 0, size, 0);
        for (int i = 0; i < obstacleCount; i++) {
            long bit = 1L << (i & 63);
            entering[firstRow(bottom[i] + 1, levelCount) * words + (i >> 6)] |= bit;
            leaving[firstRow(top[i], levelCount) * words + (i >> 6)] |= bit;
        }
    }

    /**
     * Finds the free intervals of every row, and joins those of neighbouring rows. What is in the way in the strip above
     * a row is what is in the way in the row, and what begins below the next one.
     */
    private void sweep(int levelCount) {
        if (active.length < words) {
            active = new long[words];
            strip = new long[words];
        }
        intervals = 0;
        Arrays.fill(active, 0, words, 0);
        for (int row = 0; row < levelCount; row++) {
            rowFirst[row] = intervals;
            goTo(row);
            addFree(active);
        }
        rowFirst[levelCount] = intervals;
        int rows = intervals;
        Arrays.fill(active, 0, words, 0);
        for (int row = 0; row + 1 < levelCount; row++) {
            goTo(row);
            for (int w = 0; w < words; w++) {
                strip[w] = active[w] | entering[(row + 1) * words + w];
            }
            int first = intervals;
            addFree(strip);
            join(rowFirst[row], rowFirst[row + 1], first);
            intervals = first;
        }
        intervals = rows;
    }

    private void goTo(int row) {
        for (int w = 0; w < words; w++) {
            active[w] = (active[w] | entering[row * words + w]) & ~leaving[row * words + w];
        }
    }

    /** Unites the intervals of two rows that the free intervals of the strip between them connect. */
    private void join(int lowerRow, int upperRow, int firstOfStrip) {
        int below = lowerRow;
        int above = upperRow;
        for (int i = firstOfStrip; i < intervals; i++) {
            while (high[below] < low[i]) {
                below++;
            }
            while (high[above] < low[i]) {
                above++;
            }
            union(below, above);
        }
    }

    /** Adds the intervals of x that are free of the given obstacles. */
    private void addFree(long[] inTheWay) {
        int reach = 0;
        for (int w = 0; w < words && reach <= lastX; w++) {
            for (long bits = inTheWay[w]; bits != 0; bits &= bits - 1) {
                int i = 64 * w + Long.numberOfTrailingZeros(bits);
                if (right[i] > reach) {
                    if (left[i] >= reach) {
                        if (left[i] >= lastX) {
                            break;
                        }
                        newInterval(reach, left[i]);
                    }
                    reach = right[i];
                }
            }
        }
        if (reach <= lastX) {
            newInterval(reach, lastX);
        }
    }

    private int newInterval(int from, int to) {
        if (intervals == low.length) {
            low = Arrays.copyOf(low, 2 * intervals);
            high = Arrays.copyOf(high, 2 * intervals);
            parent = Arrays.copyOf(parent, 2 * intervals);
        }
        low[intervals] = from;
        high[intervals] = to;
        parent[intervals] = intervals;
        return intervals++;
    }

    private void joinStart(int[] rects, int at, int levelCount, int outside) {
        for (int row = firstRow(rects[at + 1], levelCount); row < levelCount && levels[row] <= rects[at + 3]; row++) {
            for (int i = rowFirst[row]; i < rowFirst[row + 1]; i++) {
                if (low[i] <= rects[at + 2] && high[i] >= rects[at]) {
                    union(i, outside);
                }
            }
        }
    }

    private boolean meets(int[] rects, int at, int levelCount, int outside) {
        int root = root(outside);
        for (int row = firstRow(rects[at + 1], levelCount); row < levelCount && levels[row] <= rects[at + 3]; row++) {
            for (int i = rowFirst[row]; i < rowFirst[row + 1]; i++) {
                if (low[i] <= rects[at + 2] && high[i] >= rects[at] && root(i) == root) {
                    return true;
                }
            }
        }
        return false;
    }

    private int firstRow(int y, int levelCount) {
        int found = Arrays.binarySearch(levels, 0, levelCount, y);
        return found >= 0 ? found : -found - 1;
    }

    private void union(int a, int b) {
        parent[root(a)] = root(b);
    }

    private int root(int node) {
        int at = node;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }
}
