package org.shelterwright.solver.load.block;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Support;

/** Grids of equal pieces in one stance. */
final class Grids {
    /** Most pieces in all grids together: some tens of megabytes. */
    private static final int MOST_PIECES = 1_000_000;

    private Grids() {}

    /** All grids that fit the room and the stock; if there are too many, every so-manieth by volume. */
    static List<Block> of(LoadProblem problem, List<Block> singles, int most) {
        List<int[]> shapes = new ArrayList<>();
        Size room = problem.room();
        for (int s = 0; s < singles.size(); s++) {
            Block one = singles.get(s);
            int count = problem.kinds().get(one.kinds()[0]).count();
            boolean stacks = one.tops().length > 0 || problem.support() == Support.NONE;
            for (int nx = 1; nx <= Math.min(count, room.x() / one.dx()); nx++) {
                for (int ny = 1; ny <= Math.min(count / nx, room.y() / one.dy()); ny++) {
                    int high = stacks ? Math.min(count / (nx * ny), room.z() / one.dz()) : 1;
                    for (int nz = 1; nz <= high; nz++) {
                        if (nx * ny * nz > 1) {
                            shapes.add(new int[] {s, nx, ny, nz});
                        }
                    }
                }
            }
        }
        shapes.sort((a, b) -> Integer.compare(a[1] * a[2] * a[3], b[1] * b[2] * b[3]));
        List<Block> grids = new ArrayList<>();
        long pieces = shapes.stream()
                .mapToLong(shape -> (long) shape[1] * shape[2] * shape[3])
                .sum();
        double step = Math.max(1, Math.max((double) shapes.size() / most, (double) pieces / MOST_PIECES));
        for (double at = 0; at < shapes.size(); at += step) {
            int[] shape = shapes.get((int) at);
            grids.add(grid(singles.get(shape[0]), shape[1], shape[2], shape[3]));
        }
        return grids;
    }

    private static Block grid(Block one, int nx, int ny, int nz) {
        int pieces = nx * ny * nz;
        int[] parts = new int[pieces * Block.PART];
        int at = 0;
        for (int z = 0; z < nz; z++) {
            for (int x = 0; x < nx; x++) {
                for (int y = 0; y < ny; y++) {
                    System.arraycopy(one.parts(), 0, parts, at, Block.PART);
                    parts[at + 1] = x * one.dx();
                    parts[at + 2] = y * one.dy();
                    parts[at + 3] = z * one.dz();
                    at += Block.PART;
                }
            }
        }
        int dx = nx * one.dx();
        int dy = ny * one.dy();
        int dz = nz * one.dz();
        int[] tops = one.tops().length > 0 ? new int[] {0, 0, dx, dy, dz} : new int[0];
        return new Block(
                dx, dy, dz, pieces * one.volume(), pieces * one.value(), parts, tops, one.kinds(), new int[] {pieces});
    }
}
