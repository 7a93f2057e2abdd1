package org.shelterwright.solver.load.packing;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.solver.load.block.Block;
import org.shelterwright.solver.load.block.BlockTable;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.Stowed;
import org.shelterwright.solver.load.model.Support;
import org.shelterwright.solver.load.space.FlatSpaces;
import org.shelterwright.solver.load.space.OpenSpaces;
import org.shelterwright.solver.load.space.SpaceRule;
import org.shelterwright.solver.load.space.Spaces;

/** A load while it is built: blocks in their places, free spaces, and what is left. Not for several threads. */
public final class Packing {
    private static final int[] NO_TOPS = {};

    private final BlockTable table;
    private final List<Pinned> pinned;
    private final Spaces spaces;
    private final int[] left;
    private final long[] stocked;
    private final int[] stock;
    private int n;
    private int[] block = new int[32];
    private int[] x = new int[32];
    private int[] y = new int[32];
    private int[] z = new int[32];
    private int[] farX = new int[32];
    private int[] farY = new int[32];
    private int[] farZ = new int[32];
    private byte[] mirror = new byte[32];
    private double value;
    private int phase;
    private final @Nullable Burden burden;

    /** A piece that stays. */
    private record Pinned(int block, Box box) {}

    /** An empty room. */
    public Packing(BlockTable table) {
        this.table = table;
        this.pinned = pinned(table);
        this.spaces = table.problem().support() == Support.FULL
                ? new FlatSpaces(table.problem().room(), table.leastSide(), table.leastHeight())
                : new OpenSpaces(table.problem().room(), table.leastSide(), table.leastHeight());
        this.stock = table.problem().kinds().stream().mapToInt(CargoKind::count).toArray();
        this.left = new int[stock.length];
        this.stocked = new long[table.words()];
        this.burden = table.problem().stackingLimited() ? new Burden(table.problem()) : null;
        clear(SpaceRule.LOWEST);
    }

    /** Pinned pieces from the lowest up. */
    private static List<Pinned> pinned(BlockTable table) {
        return table.problem().practice().pinned().stream()
                .sorted(Comparator.comparingInt(one -> one.box().z0()))
                .map(one -> new Pinned(single(table, one), one.box()))
                .toList();
    }

    private static int single(BlockTable table, Stowed one) {
        Box box = one.box();
        int block = table.single(one.kind(), box.x1() - box.x0(), box.y1() - box.y0(), box.z1() - box.z0());
        if (block < 0) {
            throw new IllegalArgumentException("A pinned piece of "
                    + table.problem().kinds().get(one.kind()).name()
                    + " stands as it may not. Unpin it, or turn it.");
        }
        return block;
    }

    /** Makes the room empty but for what is to be kept free and what is pinned. */
    public void clear(SpaceRule rule) {
        n = 0;
        value = 0;
        phase = 0;
        if (burden != null) {
            burden.clear();
        }
        System.arraycopy(stock, 0, left, 0, stock.length);
        Arrays.fill(stocked, -1L);
        if ((table.size() & 63) != 0) {
            stocked[stocked.length - 1] = (1L << table.size()) - 1;
        }
        spaces.clear(rule);
        for (Box box : table.problem().practice().keptFree()) {
            spaces.put(box.x0(), box.y0(), box.z0(), box.x1(), box.y1(), box.z1(), NO_TOPS, false, false);
        }
        for (Pinned one : pinned) {
            put(one.block(), one.box().x0(), one.box().y0(), one.box().z0(), false, false);
        }
    }

    /** Takes over all of another packing of the same table. */
    public void copy(Packing o) {
        n = o.n;
        value = o.value;
        phase = o.phase;
        if (burden != null && o.burden != null) {
            burden.copy(o.burden);
        }
        room(n);
        System.arraycopy(o.block, 0, block, 0, n);
        System.arraycopy(o.x, 0, x, 0, n);
        System.arraycopy(o.y, 0, y, 0, n);
        System.arraycopy(o.z, 0, z, 0, n);
        System.arraycopy(o.farX, 0, farX, 0, n);
        System.arraycopy(o.farY, 0, farY, 0, n);
        System.arraycopy(o.farZ, 0, farZ, 0, n);
        System.arraycopy(o.mirror, 0, mirror, 0, n);
        System.arraycopy(o.left, 0, left, 0, left.length);
        System.arraycopy(o.stocked, 0, stocked, 0, stocked.length);
        spaces.copy(o.spaces);
    }

    /** Puts a block into the corner of a space that lies towards the nearest corner of the room. */
    public void put(int b, int space) {
        Block one = table.block(b);
        boolean highX = spaces.highX(space);
        boolean highY = spaces.highY(space);
        put(b, atX(one, space), atY(one, space), spaces.z0(space), highX, highY);
    }

    int atX(Block one, int space) {
        return spaces.highX(space) ? spaces.x1(space) - one.dx() : spaces.x0(space);
    }

    int atY(Block one, int space) {
        return spaces.highY(space) ? spaces.y1(space) - one.dy() : spaces.y0(space);
    }

    /** Puts a block with its low corner at a place that is free and bears it. */
    public void put(int b, int atX, int atY, int atZ, boolean mirrorX, boolean mirrorY) {
        Block one = table.block(b);
        room(n + 1);
        block[n] = b;
        x[n] = atX;
        y[n] = atY;
        z[n] = atZ;
        farX[n] = atX + one.dx();
        farY[n] = atY + one.dy();
        farZ[n] = atZ + one.dz();
        mirror[n] = (byte) ((mirrorX ? 1 : 0) | (mirrorY ? 2 : 0));
        n++;
        value += one.value();
        if (burden != null) {
            burden.put(one, atX, atY, atZ, mirrorX, mirrorY);
        }
        int[] kinds = one.kinds();
        int[] counts = one.counts();
        for (int i = 0; i < kinds.length; i++) {
            int kind = kinds[i];
            left[kind] -= counts[i];
            long[] enough = table.enough(kind, left[kind]);
            for (int w = 0; w < stocked.length; w++) {
                stocked[w] &= enough[w];
            }
        }
        spaces.put(atX, atY, atZ, atX + one.dx(), atY + one.dy(), atZ + one.dz(), one.tops(), mirrorX, mirrorY);
    }

    private void room(int blocks) {
        if (blocks > block.length) {
            int length = Math.max(blocks, 2 * block.length);
            block = Arrays.copyOf(block, length);
            x = Arrays.copyOf(x, length);
            y = Arrays.copyOf(y, length);
            z = Arrays.copyOf(z, length);
            farX = Arrays.copyOf(farX, length);
            farY = Arrays.copyOf(farY, length);
            farZ = Arrays.copyOf(farZ, length);
            mirror = Arrays.copyOf(mirror, length);
        }
    }

    public BlockTable table() {
        return table;
    }

    public Spaces spaces() {
        return spaces;
    }

    /** Volume of all pieces, each times the worth of its kind, in cubed units of length. */
    public double value() {
        return value;
    }

    /** How many of the blocks are pinned pieces: they come first. */
    public int pinned() {
        return pinned.size();
    }

    /** How many blocks stand. */
    public int size() {
        return n;
    }

    public int block(int i) {
        return block[i];
    }

    public int x(int i) {
        return x[i];
    }

    public int y(int i) {
        return y[i];
    }

    public int z(int i) {
        return z[i];
    }

    /** High end of a block along x. */
    int farX(int i) {
        return farX[i];
    }

    int farY(int i) {
        return farY[i];
    }

    int farZ(int i) {
        return farZ[i];
    }

    public boolean mirrorX(int i) {
        return (mirror[i] & 1) != 0;
    }

    public boolean mirrorY(int i) {
        return (mirror[i] & 2) != 0;
    }

    /** Which part of the order of loading it has come to, from 0. */
    public int phase() {
        return phase;
    }

    /** Goes on to the next part of the order of loading; spaces that took nothing more may do so again. */
    public void nextPhase() {
        phase++;
        spaces.revive();
    }

    /** Whether the pieces below bear a block here, and its own pieces each other. */
    public boolean bears(int b, int atX, int atY, int atZ, boolean mirrorX, boolean mirrorY) {
        return burden == null || burden.bears(table.block(b), atX, atY, atZ, mirrorX, mirrorY);
    }

    /** How many pieces of a kind are left. */
    public int left(int kind) {
        return left[kind];
    }

    /** The blocks for which the stock suffices; not to be changed. */
    long[] stocked() {
        return stocked;
    }
}
