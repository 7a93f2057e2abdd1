package org.shelterwright.solver.load.block;

import java.util.Arrays;

/**
 * Pieces that stand together as one cuboid with next to no waste. Its frame has its origin at its own low corner.
 *
 * @param dx extent along x
 * @param dy extent along y
 * @param dz extent along z
 * @param volume of the pieces, without waste
 * @param value volume of the pieces, each times the worth of its kind
 * @param parts seven figures a piece: kind, x, y, z, and its extents
 * @param tops five figures for each place on which something may stand: x0, y0, x1, y1, z; all largest rectangles
 * @param kinds which kinds it takes, ascending
 * @param counts how many of each
 */
@SuppressWarnings("ArrayRecordComponent") // never changed after they were made, and read in the innermost loops
public record Block(
        int dx, int dy, int dz, double volume, double value, int[] parts, int[] tops, int[] kinds, int[] counts) {
    static final int PART = 7;
    static final int TOP = 5;

    /** A single piece. */
    static Block single(int kind, int dx, int dy, int dz, double worth, boolean bearsLoad) {
        int[] tops = bearsLoad ? new int[] {0, 0, dx, dy, dz} : new int[0];
        return new Block(
                dx,
                dy,
                dz,
                (double) dx * dy * dz,
                (double) dx * dy * dz * worth,
                new int[] {kind, 0, 0, 0, dx, dy, dz},
                tops,
                new int[] {kind},
                new int[] {1});
    }

    public int pieces() {
        return parts.length / PART;
    }

    /** Volume of the pieces over that of the cuboid. */
    double fill() {
        return volume / ((double) dx * dy * dz);
    }

    int count(int kind) {
        int at = Arrays.binarySearch(kinds, kind);
        return at < 0 ? 0 : counts[at];
    }

    /** Whether two blocks are alike from outside, so that one of them is enough. */
    boolean likeness(Block o) {
        return dx == o.dx
                && dy == o.dy
                && dz == o.dz
                && Arrays.equals(kinds, o.kinds)
                && Arrays.equals(counts, o.counts)
                && tops.length == o.tops.length;
    }

    int likenessHash() {
        int hash = (dx * 31 + dy) * 31 + dz;
        hash = hash * 31 + Arrays.hashCode(kinds);
        hash = hash * 31 + Arrays.hashCode(counts);
        return hash * 31 + tops.length;
    }
}
