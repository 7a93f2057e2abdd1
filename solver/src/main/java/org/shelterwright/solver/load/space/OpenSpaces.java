package org.shelterwright.solver.load.space;

import java.util.Arrays;
import org.shelterwright.catalog.space.Size;

/** Free spaces where pieces may hang in the air: all largest empty cuboids. */
public final class OpenSpaces extends Spaces {
    /** The figures of a cuboid, as {@link Cuboids} numbers them. */
    private static final int X0 = 0;

    private static final int Y0 = 1;
    private static final int Z0 = 2;
    private static final int X1 = 3;
    private static final int Y1 = 4;
    private static final int Z1 = 5;

    private final Cuboids pieces = new Cuboids();

    /** Of each piece the figure that is its end at the face beside which it lies: that tells the face. */
    private int[] ends = new int[64];

    /** The last piece beside each face, and before each piece the one before it beside the same face; -1: none. */
    private final int[] last = new int[6];

    private int[] before = new int[64];
    private final Size room;

    public OpenSpaces(Size room, int leastSide, int leastHeight) {
        super(room, leastSide, leastHeight);
        this.room = room;
    }

    @Override
    public Spaces twin() {
        return new OpenSpaces(room, leastSide, leastHeight);
    }

    @Override
    public void put(
            int bx0, int by0, int bz0, int bx1, int by1, int bz1, int[] tops, boolean mirrorX, boolean mirrorY) {
        pieces.clear();
        Arrays.fill(last, -1);
        int i = 0;
        while (i < n) {
            if (x0[i] < bx1 && bx0 < x1[i] && y0[i] < by1 && by0 < y1[i] && z0[i] < bz1 && bz0 < z1[i]) {
                piece(X1, x0[i], y0[i], z0[i], bx0, y1[i], z1[i]);
                piece(X0, bx1, y0[i], z0[i], x1[i], y1[i], z1[i]);
                piece(Y1, x0[i], y0[i], z0[i], x1[i], by0, z1[i]);
                piece(Y0, x0[i], by1, z0[i], x1[i], y1[i], z1[i]);
                piece(Z1, x0[i], y0[i], z0[i], x1[i], y1[i], bz0);
                piece(Z0, x0[i], y0[i], bz1, x1[i], y1[i], z1[i]);
                remove(i);
            } else {
                i++;
            }
        }
        int whole = n;
        for (int p = 0; p < pieces.size(); p++) {
            if (!heldByPiece(p) && !heldByWhole(whole, p)) {
                add(
                        pieces.get(p, 0),
                        pieces.get(p, 1),
                        pieces.get(p, 2),
                        pieces.get(p, 3),
                        pieces.get(p, 4),
                        pieces.get(p, 5));
            }
        }
    }

    /** What is too small stays so: empty cuboids only ever shrink. */
    private void piece(int end, int px0, int py0, int pz0, int px1, int py1, int pz1) {
        if (usable(px0, py0, pz0, px1, py1, pz1)) {
            int p = pieces.size();
            if (p == ends.length) {
                ends = Arrays.copyOf(ends, 2 * p);
                before = Arrays.copyOf(before, 2 * p);
            }
            ends[p] = end;
            before[p] = last[end];
            last[end] = p;
            pieces.add(px0, py0, pz0, px1, py1, pz1);
        }
    }

    /** A piece beside one face reaches past all others, so only pieces beside the same face can hold it. */
    private boolean heldByPiece(int p) {
        for (int j = last[ends[p]]; j >= 0; j = before[j]) {
            if (pieces.makesNeedless(j, p)) {
                return true;
            }
        }
        return false;
    }

    /** A space that was not cut can hold a piece beside a face only if it ends at that face too. */
    private boolean heldByWhole(int upTo, int p) {
        int px0 = pieces.get(p, X0);
        int py0 = pieces.get(p, Y0);
        int pz0 = pieces.get(p, Z0);
        int px1 = pieces.get(p, X1);
        int py1 = pieces.get(p, Y1);
        int pz1 = pieces.get(p, Z1);
        int[] same = figures(ends[p]);
        int end = pieces.get(p, ends[p]);
        for (int i = 0; i < upTo; i++) {
            if (same[i] == end
                    && x0[i] <= px0
                    && y0[i] <= py0
                    && z0[i] <= pz0
                    && x1[i] >= px1
                    && y1[i] >= py1
                    && z1[i] >= pz1) {
                return true;
            }
        }
        return false;
    }

    /** One figure of all spaces. */
    private int[] figures(int figure) {
        return switch (figure) {
            case X0 -> x0;
            case Y0 -> y0;
            case Z0 -> z0;
            case X1 -> x1;
            case Y1 -> y1;
            default -> z1;
        };
    }
}
