package org.shelterwright.solver.load.space;

import java.util.Arrays;
import org.shelterwright.catalog.space.Size;

/**
 * The free spaces of a load as overlapping cuboids, each as large as can be. A space that nothing fits is dead: it is
 * passed over, but may still grow into another. Not for several threads.
 */
public abstract class Spaces {
    static final long DEAD = Long.MAX_VALUE;
    private static final int START = 64;

    final int roomX;
    final int roomY;
    final int roomZ;
    final int leastSide;
    final int leastHeight;
    private SpaceRule rule = SpaceRule.LOWEST;
    int n;
    int[] x0 = new int[START];
    int[] y0 = new int[START];
    int[] z0 = new int[START];
    int[] x1 = new int[START];
    int[] y1 = new int[START];
    int[] z1 = new int[START];
    private long[] order = new long[START];

    /**
     * Spaces of an empty room.
     *
     * @param leastSide shortest horizontal edge of anything that may come
     * @param leastHeight lowest thing that may come
     */
    Spaces(Size room, int leastSide, int leastHeight) {
        roomX = room.x();
        roomY = room.y();
        roomZ = room.z();
        this.leastSide = leastSide;
        this.leastHeight = leastHeight;
    }

    /** Takes away the space of a cuboid that stands in one of the spaces, and adds the places on top of it. */
    public abstract void put(
            int bx0, int by0, int bz0, int bx1, int by1, int bz1, int[] tops, boolean mirrorX, boolean mirrorY);

    /** Empty spaces of the same kind, to copy into. */
    public abstract Spaces twin();

    /** Makes the room empty. */
    public final void clear(SpaceRule by) {
        rule = by;
        n = 0;
        add(0, 0, 0, roomX, roomY, roomZ);
    }

    /** Takes over all spaces of another. */
    public final void copy(Spaces o) {
        rule = o.rule;
        n = o.n;
        if (x0.length < n) {
            grow(o.x0.length);
        }
        System.arraycopy(o.x0, 0, x0, 0, n);
        System.arraycopy(o.y0, 0, y0, 0, n);
        System.arraycopy(o.z0, 0, z0, 0, n);
        System.arraycopy(o.x1, 0, x1, 0, n);
        System.arraycopy(o.y1, 0, y1, 0, n);
        System.arraycopy(o.z1, 0, z1, 0, n);
        System.arraycopy(o.order, 0, order, 0, n);
    }

    /** The space to fill next, or -1 if all are dead. Of equal ones, the larger. */
    public final int next() {
        int best = -1;
        long least = DEAD;
        for (int i = 0; i < n; i++) {
            long key = order[i];
            if (key < least || (key == least && key != DEAD && volume(i) > volume(best))) {
                least = key;
                best = i;
            }
        }
        return best;
    }

    /** Marks a space as one that nothing fits any more. */
    public final void kill(int s) {
        order[s] = DEAD;
    }

    /** Counts all spaces as alive that something may fit. */
    public final void revive() {
        for (int i = 0; i < n; i++) {
            order[i] = key(i);
        }
    }

    public final int size() {
        return n;
    }

    public final int x0(int s) {
        return x0[s];
    }

    public final int y0(int s) {
        return y0[s];
    }

    public final int z0(int s) {
        return z0[s];
    }

    public final int x1(int s) {
        return x1[s];
    }

    public final int y1(int s) {
        return y1[s];
    }

    public final int z1(int s) {
        return z1[s];
    }

    /** Whether a space is nearer to the high end of the room along x than to the low end. */
    public final boolean highX(int s) {
        return rule != SpaceRule.FOREMOST && roomX - x1[s] < x0[s];
    }

    public final boolean highY(int s) {
        return roomY - y1[s] < y0[s];
    }

    private double volume(int s) {
        return (double) (x1[s] - x0[s]) * (y1[s] - y0[s]) * (z1[s] - z0[s]);
    }

    private long key(int s) {
        if (!usable(x0[s], y0[s], z0[s], x1[s], y1[s], z1[s])) {
            return DEAD;
        }
        long nearX = Math.min(x0[s], roomX - x1[s]);
        long nearY = Math.min(y0[s], roomY - y1[s]);
        return switch (rule) {
            case LOWEST -> ((long) z0[s] << 32) + nearX + nearY;
            case NEAREST -> nearX + nearY + z0[s];
            case FOREMOST -> ((long) x0[s] << 32) + nearY + z0[s];
        };
    }

    final boolean usable(int ax, int ay, int az, int bx, int by, int bz) {
        return bx - ax >= leastSide && by - ay >= leastSide && bz - az >= leastHeight;
    }

    final void add(int ax, int ay, int az, int bx, int by, int bz) {
        if (n == x0.length) {
            grow(2 * n);
        }
        x0[n] = ax;
        y0[n] = ay;
        z0[n] = az;
        x1[n] = bx;
        y1[n] = by;
        z1[n] = bz;
        order[n] = key(n);
        n++;
    }

    /** Takes a space out; the last one comes to its place. */
    final void remove(int s) {
        n--;
        x0[s] = x0[n];
        y0[s] = y0[n];
        z0[s] = z0[n];
        x1[s] = x1[n];
        y1[s] = y1[n];
        z1[s] = z1[n];
        order[s] = order[n];
    }

    private void grow(int length) {
        x0 = Arrays.copyOf(x0, length);
        y0 = Arrays.copyOf(y0, length);
        z0 = Arrays.copyOf(z0, length);
        x1 = Arrays.copyOf(x1, length);
        y1 = Arrays.copyOf(y1, length);
        z1 = Arrays.copyOf(z1, length);
        order = Arrays.copyOf(order, length);
    }
}
