package org.shelterwright.solver.load.refill;

import java.util.Arrays;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.fit.kernel.Dice;
import org.shelterwright.solver.load.beam.Trace;
import org.shelterwright.solver.load.block.Block;
import org.shelterwright.solver.load.block.BlockTable;

/** Chooses by chance which blocks of a load are taken out: those in a region, and all that stands above them. */
final class Region {
    private final BlockTable table;
    private final Size room;
    private final Dice dice;
    private final int pinned;
    private boolean[] out = new boolean[64];
    private int removed;

    /** @param pinned how many of the first blocks of each load stay */
    Region(BlockTable table, int pinned, Dice dice) {
        this.table = table;
        this.room = table.problem().room();
        this.pinned = pinned;
        this.dice = dice;
    }

    /** Chooses. */
    void choose(Trace load) {
        if (out.length < load.size()) {
            out = new boolean[2 * load.size()];
        }
        double u = dice.share();
        double size = 0.3 + 0.7 * u * u;
        double kind = dice.share();
        if (kind < 0.8) {
            int length = Math.max(1, (int) (size * (0.15 + 0.4 * dice.share()) * room.x()));
            int x0 = (int) (dice.share() * (room.x() - length));
            if (kind < 0.4) {
                mark(load, x0, x0 + length, 0, room.y(), 0);
            } else if (kind < 0.6) {
                int width = Math.max(1, (int) (size * (0.4 + 0.6 * dice.share()) * room.y()));
                int y0 = (int) (dice.share() * (room.y() - width));
                mark(load, x0, x0 + 2 * length, y0, y0 + width, 0);
            } else {
                mark(load, x0, x0 + 2 * length, 0, room.y(), (int) ((0.2 + 0.6 * dice.share()) * room.z()));
            }
        } else {
            double share = size * (0.1 + 0.3 * dice.share());
            for (int i = 0; i < load.size(); i++) {
                out[i] = dice.share() < share;
            }
        }
        Arrays.fill(out, 0, Math.min(pinned, load.size()), false);
        takeAbove(load);
    }

    private void mark(Trace load, int x0, int x1, int y0, int y1, int z) {
        for (int i = 0; i < load.size(); i++) {
            Block block = table.block(load.block(i));
            out[i] = load.x(i) < x1
                    && x0 < load.x(i) + block.dx()
                    && load.y(i) < y1
                    && y0 < load.y(i) + block.dy()
                    && z < load.z(i) + block.dz();
        }
    }

    /** Whatever stands above something taken out is taken out too; in one pass, from the lowest up. */
    private void takeAbove(Trace load) {
        removed = 0;
        int[] upwards = load.upwards();
        for (int a = 0; a < upwards.length; a++) {
            int i = upwards[a];
            for (int b = 0; b < a && !out[i] && i >= pinned; b++) {
                int j = upwards[b];
                out[i] = out[j] && above(load, i, j);
            }
            if (out[i]) {
                removed++;
            }
        }
    }

    private boolean above(Trace load, int i, int j) {
        Block upper = table.block(load.block(i));
        Block lower = table.block(load.block(j));
        return load.z(i) >= load.z(j)
                && load.x(i) < load.x(j) + lower.dx()
                && load.x(j) < load.x(i) + upper.dx()
                && load.y(i) < load.y(j) + lower.dy()
                && load.y(j) < load.y(i) + upper.dy();
    }

    boolean out(int i) {
        return out[i];
    }

    int removed() {
        return removed;
    }
}
