package org.shelterwright.solver.load.space;

import org.shelterwright.catalog.space.Size;

/**
 * Free spaces where every base is fully supported. Then every vertical line is solid from the floor up, so what is free is
 * what lies above a height map, and a space is a largest flat rectangle of that map with all that is above it. Putting a
 * block cuts rectangles of its own level only; its tops are joined with what is level beside them (the consensus of two
 * rectangles, until nothing new comes), so that a piece may stand across several.
 */
public final class FlatSpaces extends Spaces {
    private final Cuboids pieces = new Cuboids();
    private final Cuboids waiting = new Cuboids();
    private final Size room;

    public FlatSpaces(Size room, int leastSide, int leastHeight) {
        super(room, leastSide, leastHeight);
        this.room = room;
    }

    @Override
    public Spaces twin() {
        return new FlatSpaces(room, leastSide, leastHeight);
    }

    @Override
    public void put(
            int bx0, int by0, int bz0, int bx1, int by1, int bz1, int[] tops, boolean mirrorX, boolean mirrorY) {
        cut(bx0, by0, bx1, by1, bz0);
        for (int i = 0; i < tops.length; i += 5) {
            int z = bz0 + tops[i + 4];
            if (roomZ - z >= leastHeight) {
                int tx0 = mirrorX ? bx1 - tops[i + 2] : bx0 + tops[i];
                int tx1 = mirrorX ? bx1 - tops[i] : bx0 + tops[i + 2];
                int ty0 = mirrorY ? by1 - tops[i + 3] : by0 + tops[i + 1];
                int ty1 = mirrorY ? by1 - tops[i + 1] : by0 + tops[i + 3];
                level(tx0, ty0, tx1, ty1, z);
            }
        }
    }

    /** Takes a footprint out of the rectangles of one level. */
    private void cut(int bx0, int by0, int bx1, int by1, int z) {
        pieces.clear();
        int i = 0;
        while (i < n) {
            if (z0[i] == z && x0[i] < bx1 && bx0 < x1[i] && y0[i] < by1 && by0 < y1[i]) {
                if (x0[i] < bx0) {
                    piece(x0[i], y0[i], bx0, y1[i], z);
                }
                if (bx1 < x1[i]) {
                    piece(bx1, y0[i], x1[i], y1[i], z);
                }
                if (y0[i] < by0) {
                    piece(x0[i], y0[i], x1[i], by0, z);
                }
                if (by1 < y1[i]) {
                    piece(x0[i], by1, x1[i], y1[i], z);
                }
                remove(i);
            } else {
                i++;
            }
        }
        int whole = n;
        for (int p = 0; p < pieces.size(); p++) {
            if (!pieces.held(p)) {
                int px0 = pieces.get(p, 0);
                int py0 = pieces.get(p, 1);
                int px1 = pieces.get(p, 3);
                int py1 = pieces.get(p, 4);
                if (!held(whole, px0, py0, px1, py1, z)) {
                    add(px0, py0, z, px1, py1, roomZ);
                }
            }
        }
    }

    /** On the floor nothing level will ever be added, so what is too narrow there stays so. */
    private void piece(int px0, int py0, int px1, int py1, int z) {
        if (z > 0 || (px1 - px0 >= leastSide && py1 - py0 >= leastSide)) {
            pieces.add(px0, py0, z, px1, py1, roomZ);
        }
    }

    private boolean held(int upTo, int px0, int py0, int px1, int py1, int z) {
        for (int i = 0; i < upTo; i++) {
            if (z0[i] == z && x0[i] <= px0 && y0[i] <= py0 && x1[i] >= px1 && y1[i] >= py1) {
                return true;
            }
        }
        return false;
    }

    /** Adds a flat place and all that it forms with what is level and touches it. */
    private void level(int px0, int py0, int px1, int py1, int z) {
        waiting.clear();
        waiting.add(px0, py0, z, px1, py1, roomZ);
        while (waiting.size() > 0) {
            int top = waiting.pop();
            int ax0 = waiting.get(top, 0);
            int ay0 = waiting.get(top, 1);
            int ax1 = waiting.get(top, 3);
            int ay1 = waiting.get(top, 4);
            if (held(n, ax0, ay0, ax1, ay1, z)) {
                continue;
            }
            int i = 0;
            while (i < n) {
                if (z0[i] == z && x0[i] >= ax0 && y0[i] >= ay0 && x1[i] <= ax1 && y1[i] <= ay1) {
                    remove(i);
                } else {
                    i++;
                }
            }
            for (i = 0; i < n; i++) {
                if (z0[i] == z) {
                    consensus(i, ax0, ay0, ax1, ay1, z);
                }
            }
            add(ax0, ay0, z, ax1, ay1, roomZ);
        }
    }

    private void consensus(int i, int ax0, int ay0, int ax1, int ay1, int z) {
        int lowX = Math.max(x0[i], ax0);
        int highX = Math.min(x1[i], ax1);
        int lowY = Math.max(y0[i], ay0);
        int highY = Math.min(y1[i], ay1);
        if (lowX > highX || lowY > highY) {
            return;
        }
        if (lowY < highY) {
            int from = Math.min(x0[i], ax0);
            int to = Math.max(x1[i], ax1);
            if ((from < ax0 || to > ax1) && (from < x0[i] || to > x1[i])) {
                waiting.add(from, lowY, z, to, highY, roomZ);
            }
        }
        if (lowX < highX) {
            int from = Math.min(y0[i], ay0);
            int to = Math.max(y1[i], ay1);
            if ((from < ay0 || to > ay1) && (from < y0[i] || to > y1[i])) {
                waiting.add(lowX, from, z, highX, to, roomZ);
            }
        }
    }
}
