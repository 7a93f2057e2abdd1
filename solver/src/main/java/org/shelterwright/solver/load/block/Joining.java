package org.shelterwright.solver.load.block;

import org.jspecify.annotations.Nullable;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Support;

/** Joins two blocks along one axis if what comes out fits the room and the stock and wastes next to nothing. */
final class Joining {
    private final LoadProblem problem;
    private final int[] stock;
    private final double leastFill;
    private final boolean supported;

    Joining(LoadProblem problem, double leastFill) {
        this.problem = problem;
        this.stock = problem.kinds().stream().mapToInt(kind -> kind.count()).toArray();
        this.leastFill = leastFill;
        this.supported = problem.support() == Support.FULL;
    }

    /** Puts the second beside the first, at its high end along x. */
    @Nullable
    Block alongX(Block a, Block b) {
        int dy = Math.max(a.dy(), b.dy());
        int dz = Math.max(a.dz(), b.dz());
        int dx = a.dx() + b.dx();
        if (dx > problem.room().x() || wasteful(a, b, dx, dy, dz) || !stocked(a, b)) {
            return null;
        }
        return made(a, b, a.dx(), 0, 0, dx, dy, dz, Tops.beside(a, b, a.dx(), 0));
    }

    /** Puts the second beside the first, at its high end along y. */
    @Nullable
    Block alongY(Block a, Block b) {
        int dx = Math.max(a.dx(), b.dx());
        int dz = Math.max(a.dz(), b.dz());
        int dy = a.dy() + b.dy();
        if (dy > problem.room().y() || wasteful(a, b, dx, dy, dz) || !stocked(a, b)) {
            return null;
        }
        return made(a, b, 0, a.dy(), 0, dx, dy, dz, Tops.beside(a, b, 0, a.dy()));
    }

    /** Puts the second on the first. */
    @Nullable
    Block onTop(Block a, Block b) {
        if (a.dz() + b.dz() > problem.room().z()) {
            return null;
        }
        int dx = Math.max(a.dx(), b.dx());
        int dy = Math.max(a.dy(), b.dy());
        if (!supported) {
            int dz = a.dz() + b.dz();
            return wasteful(a, b, dx, dy, dz) || !stocked(a, b)
                    ? null
                    : made(a, b, 0, 0, a.dz(), dx, dy, dz, new int[0]);
        }
        if (b.dx() > a.dx() || b.dy() > a.dy() || wasteful(a, b, dx, dy, Math.max(a.dz(), b.dz()))) {
            return null;
        }
        int level = Tops.levelFor(a, b.dx(), b.dy());
        if (level < 0) {
            return null;
        }
        int dz = Math.max(a.dz(), level + b.dz());
        return wasteful(a, b, dx, dy, dz) || !stocked(a, b)
                ? null
                : made(a, b, 0, 0, level, dx, dy, dz, Tops.onTop(a, b, level));
    }

    private @Nullable Block made(Block a, Block b, int x, int y, int z, int dx, int dy, int dz, int[] tops) {
        if (tops.length > Tops.MOST * Block.TOP) {
            return null;
        }
        int[] parts = new int[a.parts().length + b.parts().length];
        System.arraycopy(a.parts(), 0, parts, 0, a.parts().length);
        System.arraycopy(b.parts(), 0, parts, a.parts().length, b.parts().length);
        for (int i = a.parts().length; i < parts.length; i += Block.PART) {
            parts[i + 1] += x;
            parts[i + 2] += y;
            parts[i + 3] += z;
        }
        int[] kinds = new int[a.kinds().length + b.kinds().length];
        int[] counts = new int[kinds.length];
        int n = 0;
        int i = 0;
        int j = 0;
        while (i < a.kinds().length || j < b.kinds().length) {
            int ka = i < a.kinds().length ? a.kinds()[i] : Integer.MAX_VALUE;
            int kb = j < b.kinds().length ? b.kinds()[j] : Integer.MAX_VALUE;
            kinds[n] = Math.min(ka, kb);
            counts[n++] = (ka <= kb ? a.counts()[i++] : 0) + (kb <= ka ? b.counts()[j++] : 0);
        }
        return new Block(
                dx,
                dy,
                dz,
                a.volume() + b.volume(),
                a.value() + b.value(),
                parts,
                tops,
                java.util.Arrays.copyOf(kinds, n),
                java.util.Arrays.copyOf(counts, n));
    }

    /** For a block on another, called with the greater height too, since the true one is only greater. */
    private boolean wasteful(Block a, Block b, int dx, int dy, int dz) {
        return a.volume() + b.volume() < leastFill * dx * dy * dz;
    }

    private boolean stocked(Block a, Block b) {
        for (int i = 0; i < a.kinds().length; i++) {
            int kind = a.kinds()[i];
            if (a.counts()[i] + b.count(kind) > stock[kind]) {
                return false;
            }
        }
        return true;
    }
}
