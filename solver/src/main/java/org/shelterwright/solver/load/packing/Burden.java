package org.shelterwright.solver.load.packing;

import java.util.Arrays;
import org.shelterwright.solver.load.block.Block;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.LoadProblem;

/**
 * What rests on each piece of a load. A piece hands its mass and all that rests on it down to the pieces under it, each
 * taking the share of its base that it bears; the floor bears everything.
 */
final class Burden {
    private static final int STRIDE = 7;
    private static final double ROUNDING = 1e-9;

    private final double[] mass;
    private final double[] capacity;
    private int n;
    private int[] piece = new int[64 * STRIDE];
    private double[] load = new double[64];
    private double[] kept = new double[64];

    Burden(LoadProblem problem) {
        mass = problem.kinds().stream().mapToDouble(CargoKind::massKg).toArray();
        capacity = problem.kinds().stream().mapToDouble(CargoKind::topLoadKg).toArray();
    }

    void clear() {
        n = 0;
    }

    void copy(Burden o) {
        n = o.n;
        if (load.length < n) {
            piece = new int[o.piece.length];
            load = new double[o.load.length];
        }
        System.arraycopy(o.piece, 0, piece, 0, n * STRIDE);
        System.arraycopy(o.load, 0, load, 0, n);
    }

    /** Whether a block would be borne; changes nothing. */
    boolean bears(Block block, int x, int y, int z, boolean mirrorX, boolean mirrorY) {
        int before = n;
        if (kept.length < load.length) {
            kept = new double[load.length];
        }
        System.arraycopy(load, 0, kept, 0, n);
        boolean borne = put(block, x, y, z, mirrorX, mirrorY);
        n = before;
        System.arraycopy(kept, 0, load, 0, n);
        return borne;
    }

    /** Adds the pieces of a block, and tells whether everything below bears them. */
    boolean put(Block block, int x, int y, int z, boolean mirrorX, boolean mirrorY) {
        int first = n;
        int[] parts = block.parts();
        for (int p = 0; p < parts.length; p += STRIDE) {
            if (n == load.length) {
                piece = Arrays.copyOf(piece, 2 * piece.length);
                load = Arrays.copyOf(load, 2 * load.length);
            }
            int px = x + (mirrorX ? block.dx() - parts[p + 1] - parts[p + 4] : parts[p + 1]);
            int py = y + (mirrorY ? block.dy() - parts[p + 2] - parts[p + 5] : parts[p + 2]);
            int at = n * STRIDE;
            piece[at] = parts[p];
            piece[at + 1] = px;
            piece[at + 2] = py;
            piece[at + 3] = z + parts[p + 3];
            piece[at + 4] = px + parts[p + 4];
            piece[at + 5] = py + parts[p + 5];
            piece[at + 6] = z + parts[p + 3] + parts[p + 6];
            load[n++] = 0;
        }
        boolean borne = true;
        for (int i = first; i < n; i++) {
            borne &= hand(i, mass[piece[i * STRIDE]]);
        }
        return borne;
    }

    /** Hands a mass that weighs on the base of a piece down to what is under it. */
    private boolean hand(int i, double kg) {
        int at = i * STRIDE;
        int z = piece[at + 3];
        if (z == 0) {
            return true;
        }
        double base = (double) (piece[at + 4] - piece[at + 1]) * (piece[at + 5] - piece[at + 2]);
        boolean borne = true;
        for (int j = 0; j < n; j++) {
            int under = j * STRIDE;
            if (piece[under + 6] == z) {
                int dx = Math.min(piece[at + 4], piece[under + 4]) - Math.max(piece[at + 1], piece[under + 1]);
                int dy = Math.min(piece[at + 5], piece[under + 5]) - Math.max(piece[at + 2], piece[under + 2]);
                if (dx > 0 && dy > 0) {
                    double share = kg * ((double) dx * dy / base);
                    load[j] += share;
                    borne &= load[j] <= capacity[piece[under]] * (1 + ROUNDING);
                    borne &= hand(j, share);
                }
            }
        }
        return borne;
    }
}
