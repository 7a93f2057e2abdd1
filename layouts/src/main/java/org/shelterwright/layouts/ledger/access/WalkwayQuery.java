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
    private int[] order = new int[64];
    private long[] keys = new long[64];
    private int[] levels = new int[64];
    private int[] rowFirst = new int[65];
    private int[] low = new int[256];
    private int[] high = new int[256];
    private int[] parent = new int[256];
    private int intervals;

    private int width;
    private int[] obstacles = {};
    private int obstacleCount;
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
        obstacles = obstacleRects;
        obstacleCount = obstacleNumber;
        lastX = roomX - personWidth;
        int lastY = roomY - personWidth;
        int[] starts = starts(doors);
        if (lastX < 0 || lastY < 0 || starts.length == 0) {
            return reached;
        }
        int[] standing = standing(targets);
        sortObstacles();
        int levelCount = findLevels(lastY, starts, standing);
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

    private void sortObstacles() {
        if (keys.length < obstacleCount) {
            keys = new long[2 * obstacleCount];
            order = new int[2 * obstacleCount];
        }
        for (int i = 0; i < obstacleCount; i++) {
            keys[i] = ((long) obstacles[4 * i] << 32) | i;
        }
        Arrays.sort(keys, 0, obstacleCount);
        for (int i = 0; i < obstacleCount; i++) {
            order[i] = 4 * (int) keys[i];
        }
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
            int top = obstacles[4 * i + 3];
            if (top > 0 && top <= lastY) {
                levels[count++] = top;
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

    /** Finds the free intervals of every row, and joins those of neighbouring rows. */
    private void sweep(int levelCount) {
        intervals = 0;
        for (int row = 0; row < levelCount; row++) {
            rowFirst[row] = intervals;
            addFree(levels[row], levels[row]);
        }
        rowFirst[levelCount] = intervals;
        int rows = intervals;
        for (int row = 0; row + 1 < levelCount; row++) {
            int first = intervals;
            addFree(levels[row], levels[row + 1]);
            int below = rowFirst[row];
            int above = rowFirst[row + 1];
            for (int strip = first; strip < intervals; strip++) {
                while (high[below] < low[strip]) {
                    below++;
                }
                while (high[above] < low[strip]) {
                    above++;
                }
                union(below, above);
            }
            intervals = first;
        }
        intervals = rows;
    }

    /** Adds the intervals of x that are free at all y from y0 to y1: at the row itself if equal, else the open strip. */
    private void addFree(int y0, int y1) {
        int reach = 0;
        for (int i = 0; i < obstacleCount && reach <= lastX; i++) {
            int o = order[i];
            int bottom = obstacles[o + 1] - width;
            int top = obstacles[o + 3];
            if (bottom < y1 && top > y0 && obstacles[o + 2] > reach) {
                int left = obstacles[o] - width;
                if (left >= reach) {
                    newInterval(reach, Math.min(left, lastX));
                }
                reach = Math.max(reach, obstacles[o + 2]);
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
