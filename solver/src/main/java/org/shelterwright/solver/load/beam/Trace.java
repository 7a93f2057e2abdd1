package org.shelterwright.solver.load.beam;

import java.util.Arrays;
import org.shelterwright.solver.load.packing.Packing;

/** Where the blocks of a load stand, and what it is worth. Not for several threads. */
public final class Trace {
    /** Figures a block: its number, x, y, z, mirrored along x (1) and y (2). */
    private static final int STRIDE = 5;

    private int n;
    private int[] at = new int[64 * STRIDE];
    private double worth = Double.NEGATIVE_INFINITY;

    /** Forgets what it holds. */
    public void clear() {
        n = 0;
        worth = Double.NEGATIVE_INFINITY;
    }

    /** Takes over a load. */
    public void take(Packing packing, double value) {
        n = packing.size();
        worth = value;
        if (at.length < n * STRIDE) {
            at = new int[2 * n * STRIDE];
        }
        for (int i = 0; i < n; i++) {
            at[i * STRIDE] = packing.block(i);
            at[i * STRIDE + 1] = packing.x(i);
            at[i * STRIDE + 2] = packing.y(i);
            at[i * STRIDE + 3] = packing.z(i);
            at[i * STRIDE + 4] = (packing.mirrorX(i) ? 1 : 0) | (packing.mirrorY(i) ? 2 : 0);
        }
    }

    /** Takes over another. */
    public void copy(Trace o) {
        n = o.n;
        worth = o.worth;
        if (at.length < n * STRIDE) {
            at = new int[o.at.length];
        }
        System.arraycopy(o.at, 0, at, 0, n * STRIDE);
    }

    /** Puts one of its blocks into a packing, in the same place. */
    public void put(int i, Packing packing) {
        packing.put(block(i), x(i), y(i), z(i), (at[i * STRIDE + 4] & 1) != 0, (at[i * STRIDE + 4] & 2) != 0);
    }

    /** The blocks from the lowest up, so that each stands on what comes before it. */
    public int[] upwards() {
        long[] keys = new long[n];
        for (int i = 0; i < n; i++) {
            keys[i] = ((long) z(i) << 32) + i;
        }
        Arrays.sort(keys);
        return Arrays.stream(keys).mapToInt(key -> (int) key).toArray();
    }

    public int size() {
        return n;
    }

    /** What the load is worth, in cubed units of length; minus infinity if there is none. */
    public double worth() {
        return worth;
    }

    public int block(int i) {
        return at[i * STRIDE];
    }

    public int x(int i) {
        return at[i * STRIDE + 1];
    }

    public int y(int i) {
        return at[i * STRIDE + 2];
    }

    public int z(int i) {
        return at[i * STRIDE + 3];
    }

    public boolean mirrorX(int i) {
        return (at[i * STRIDE + 4] & 1) != 0;
    }

    public boolean mirrorY(int i) {
        return (at[i * STRIDE + 4] & 2) != 0;
    }
}
