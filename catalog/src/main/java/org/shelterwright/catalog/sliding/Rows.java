package org.shelterwright.catalog.sliding;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Box;

/**
 * The free intervals along x of each cell of the y and z levels, found when first asked for. An interval is closed and may
 * have no length: that is an exact fit.
 */
final class Rows {
    private final Levels ys;
    private final Levels zs;
    private final int[] lows;
    private final int[] highs;
    private final long[] alive;
    private final int domainLow;
    private final int domainHigh;
    private final int[] @Nullable [] cells;
    private final long[] @Nullable [] entered;
    private @Nullable Box within;
    private int[] found = new int[16];

    /**
     * @param lows low ends of the open obstacles on x, rising
     * @param highs their high ends
     * @param alive set of obstacles that are there
     */
    Rows(Levels ys, Levels zs, int[] lows, int[] highs, long[] alive, int domainLow, int domainHigh) {
        this.ys = ys;
        this.zs = zs;
        this.lows = lows;
        this.highs = highs;
        this.alive = alive;
        this.domainLow = domainLow;
        this.domainHigh = domainHigh;
        this.cells = new int[(2 * ys.count() - 1) * (2 * zs.count() - 1)][];
        this.entered = new long[cells.length][];
    }

    /** Rows on levels that reach beyond a domain: whatever lies outside it is blocked. */
    Rows(Levels ys, Levels zs, int[] lows, int[] highs, long[] alive, Box domain) {
        this(ys, zs, lows, highs, alive, domain.x0(), domain.x1());
        within = domain;
    }

    private static boolean outside(Levels levels, int cell, int low, int high) {
        return levels.level(cell / 2) < low || levels.level((cell + 1) / 2) > high;
    }

    int cell(int yCell, int zCell) {
        return yCell * (2 * zs.count() - 1) + zCell;
    }

    int yCell(int cell) {
        return cell / (2 * zs.count() - 1);
    }

    int zCell(int cell) {
        return cell % (2 * zs.count() - 1);
    }

    /** The free intervals of a cell: low, high, low, high ... rising. */
    int[] intervals(int cell) {
        int[] known = cells[cell];
        if (known == null) {
            known = compute(cell);
            cells[cell] = known;
        }
        return known;
    }

    /** Notes that a search has come to an interval of a cell; false if it had been there. */
    boolean enter(int cell, int interval) {
        long[] been = entered[cell];
        if (been == null) {
            been = new long[1 + intervals(cell).length / 128];
            entered[cell] = been;
        }
        long bit = 1L << interval;
        boolean first = (been[interval >>> 6] & bit) == 0;
        been[interval >>> 6] |= bit;
        return first;
    }

    private int[] compute(int cell) {
        Box domain = within;
        if (domain != null
                && (outside(ys, yCell(cell), domain.y0(), domain.y1())
                        || outside(zs, zCell(cell), domain.z0(), domain.z1()))) {
            return new int[0];
        }
        int length = 0;
        int from = domainLow;
        for (int word = 0; word < alive.length && from <= domainHigh; word++) {
            long bits = bits(cell, word);
            while (bits != 0 && from <= domainHigh) {
                int obstacle = (word << 6) + Long.numberOfTrailingZeros(bits);
                bits &= bits - 1;
                if (lows[obstacle] >= domainHigh) {
                    break;
                }
                // Equal ends leave an interval without length: an exact fit.
                if (lows[obstacle] >= from) {
                    length = append(length, from, lows[obstacle]);
                    from = highs[obstacle];
                } else if (highs[obstacle] > from) {
                    from = highs[obstacle];
                }
            }
        }
        if (from <= domainHigh) {
            length = append(length, from, domainHigh);
        }
        return Arrays.copyOf(found, length);
    }

    private int append(int length, int low, int high) {
        if (length + 2 > found.length) {
            found = Arrays.copyOf(found, 2 * found.length);
        }
        found[length] = low;
        found[length + 1] = high;
        return length + 2;
    }

    boolean holds(int yCell, int zCell) {
        return yCell >= 0 && zCell >= 0 && yCell < 2 * ys.count() - 1 && zCell < 2 * zs.count() - 1;
    }

    /** A set of obstacles, empty. */
    long[] noObstacles() {
        return new long[alive.length];
    }

    /** Marks the obstacles of a cell that end at, or begin at, the ends of one of its free intervals. */
    void markEnding(int cell, int low, int high, long[] marked) {
        for (int word = 0; word < alive.length; word++) {
            for (long bits = bits(cell, word) & ~marked[word]; bits != 0; bits &= bits - 1) {
                int obstacle = (word << 6) + Long.numberOfTrailingZeros(bits);
                if (highs[obstacle] == low || lows[obstacle] == high) {
                    marked[word] |= 1L << obstacle;
                }
            }
        }
    }

    /** Marks the obstacles of a cell, if there is such a cell, that share a place with an interval. */
    void markMeeting(int yCell, int zCell, int low, int high, long[] marked) {
        if (!holds(yCell, zCell)) {
            return;
        }
        int cell = cell(yCell, zCell);
        for (int word = 0; word < alive.length; word++) {
            for (long bits = bits(cell, word) & ~marked[word]; bits != 0; bits &= bits - 1) {
                int obstacle = (word << 6) + Long.numberOfTrailingZeros(bits);
                if (lows[obstacle] < high && highs[obstacle] > low) {
                    marked[word] |= 1L << obstacle;
                }
            }
        }
    }

    private long bits(int cell, int word) {
        return ys.mask(yCell(cell), word) & zs.mask(zCell(cell), word) & alive[word];
    }
}
