package org.shelterwright.solver.load.space;

import org.shelterwright.catalog.space.Size;

/** Free spaces where pieces may hang in the air: all largest empty cuboids. */
public final class OpenSpaces extends Spaces {
    private final Cuboids pieces = new Cuboids();
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
        int i = 0;
        while (i < n) {
            if (x0[i] < bx1 && bx0 < x1[i] && y0[i] < by1 && by0 < y1[i] && z0[i] < bz1 && bz0 < z1[i]) {
                piece(x0[i], y0[i], z0[i], bx0, y1[i], z1[i]);
                piece(bx1, y0[i], z0[i], x1[i], y1[i], z1[i]);
                piece(x0[i], y0[i], z0[i], x1[i], by0, z1[i]);
                piece(x0[i], by1, z0[i], x1[i], y1[i], z1[i]);
                piece(x0[i], y0[i], z0[i], x1[i], y1[i], bz0);
                piece(x0[i], y0[i], bz1, x1[i], y1[i], z1[i]);
                remove(i);
            } else {
                i++;
            }
        }
        int whole = n;
        for (int p = 0; p < pieces.size(); p++) {
            if (!pieces.held(p) && !heldByWhole(whole, p)) {
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
    private void piece(int px0, int py0, int pz0, int px1, int py1, int pz1) {
        if (usable(px0, py0, pz0, px1, py1, pz1)) {
            pieces.add(px0, py0, pz0, px1, py1, pz1);
        }
    }

    private boolean heldByWhole(int upTo, int p) {
        int px0 = pieces.get(p, 0);
        int py0 = pieces.get(p, 1);
        int pz0 = pieces.get(p, 2);
        int px1 = pieces.get(p, 3);
        int py1 = pieces.get(p, 4);
        int pz1 = pieces.get(p, 5);
        for (int i = 0; i < upTo; i++) {
            if (x0[i] <= px0 && y0[i] <= py0 && z0[i] <= pz0 && x1[i] >= px1 && y1[i] >= py1 && z1[i] >= pz1) {
                return true;
            }
        }
        return false;
    }
}
