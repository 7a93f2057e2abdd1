package org.shelterwright.solver.load.block;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Practice.Door;
import org.shelterwright.solver.load.model.Support;

/**
 * Makes the blocks of a problem: first grids of equal pieces, then joins of two blocks, generation by generation, until
 * there are enough or the allowance of trials is used up. The idea is that of general blocks (Fanslau and Bortfeldt, A
 * tree search algorithm for solving the container loading problem, INFORMS Journal on Computing 22 (2010); from memory).
 */
public final class Blocks {
    /** Most trials to join two blocks: about a tenth of a second. */
    private static final long MOST_TRIALS = 15_000_000;

    private static final int LOOK = 4_096;

    private final LoadProblem problem;
    private final Joining joining;
    private final int most;
    private final BiPredicate<CargoKind, CargoKind> compatible;
    private final BooleanSupplier late;
    private boolean ended;
    private final List<Block> blocks = new ArrayList<>();
    private final Set<Likeness> seen = new HashSet<>();
    private final double leastFill;
    private final boolean supported;
    private int[] extents;
    private double[] volumes;
    private long trials;

    private record Likeness(Block block) {
        @Override
        public boolean equals(@Nullable Object o) {
            return o instanceof Likeness other && block.likeness(other.block);
        }

        @Override
        public int hashCode() {
            return block.likenessHash();
        }
    }

    private Blocks(
            LoadProblem problem,
            double leastFill,
            int most,
            BiPredicate<CargoKind, CargoKind> compatible,
            BooleanSupplier late) {
        this.problem = problem;
        this.joining = new Joining(problem, leastFill);
        this.leastFill = leastFill;
        this.supported = problem.support() == Support.FULL;
        this.extents = new int[3 * most];
        this.volumes = new double[most];
        this.most = most;
        this.compatible = compatible;
        this.late = late;
    }

    /**
     * Makes the blocks.
     *
     * @param leastFill least share of a block's cuboid that its pieces fill
     * @param most how many blocks are enough; single pieces always come in
     * @param compatible whether pieces of two kinds may stand in one block
     * @param late asked now and then whether to end with what there is
     */
    public static List<Block> of(
            LoadProblem problem,
            double leastFill,
            int most,
            BiPredicate<CargoKind, CargoKind> compatible,
            BooleanSupplier late) {
        return new Blocks(problem, leastFill, most, compatible, late).make();
    }

    private List<Block> make() {
        List<Block> singles = new ArrayList<>();
        for (int k = 0; k < problem.kinds().size(); k++) {
            for (Block single : singles(k)) {
                singles.add(single);
                add(single);
            }
        }
        Grids.of(problem, singles, most / 2).forEach(this::add);
        int from = 0;
        while (from < blocks.size() && !ended) {
            int to = blocks.size();
            generation(from, to);
            from = to;
        }
        return blocks;
    }

    /** Pieces of a kind in each stance that fits the room and passes its door. */
    private List<Block> singles(int k) {
        CargoKind kind = problem.kinds().get(k);
        Door door = problem.practice().door();
        Size room = problem.room();
        List<Block> singles = new ArrayList<>();
        for (Size stance : kind.upright().stances(kind.size())) {
            boolean fits = stance.x() <= room.x() && stance.y() <= room.y() && stance.z() <= room.z();
            if (fits && (door == null || door.passes(stance.x(), stance.y(), stance.z()))) {
                singles.add(Block.single(k, stance.x(), stance.y(), stance.z(), kind.worth(), kind.topLoadKg() > 0));
            }
        }
        return singles;
    }

    /** Joins each pair of which at least one is new; pairs of small numbers come first, so that no kind is favoured. */
    private void generation(int from, int to) {
        for (int sum = from; sum <= 2 * (to - 1); sum++) {
            for (int i = Math.max(0, sum - to + 1); i <= Math.min(sum, to - 1); i++) {
                int j = sum - i;
                if (i < from && j < from) {
                    continue;
                }
                trials++;
                ended = blocks.size() >= most || trials > MOST_TRIALS || (trials % LOOK == 0 && late.getAsBoolean());
                if (ended) {
                    return;
                }
                join(i, j);
            }
        }
    }

    /** Most pairs fail by their volume alone, so that is looked at first. */
    private void join(int i, int j) {
        double least = (volumes[i] + volumes[j]) / leastFill;
        int ax = extents[3 * i];
        int ay = extents[3 * i + 1];
        int az = extents[3 * i + 2];
        int bx = extents[3 * j];
        int by = extents[3 * j + 1];
        int bz = extents[3 * j + 2];
        double mx = Math.max(ax, bx);
        double my = Math.max(ay, by);
        double mz = Math.max(az, bz);
        boolean alongX = (ax + bx) * my * mz <= least;
        boolean alongY = mx * (ay + by) * mz <= least;
        boolean onTop = supported ? bx <= ax && by <= ay && mx * my * mz <= least : mx * my * (az + bz) <= least;
        if (alongX || alongY || onTop) {
            Block a = blocks.get(i);
            Block b = blocks.get(j);
            if (compatible(a, b)) {
                add(alongX ? joining.alongX(a, b) : null);
                add(alongY ? joining.alongY(a, b) : null);
                add(onTop ? joining.onTop(a, b) : null);
            }
        }
    }

    private boolean compatible(Block a, Block b) {
        CargoKind one = problem.kinds().get(a.kinds()[0]);
        CargoKind other = problem.kinds().get(b.kinds()[0]);
        return compatible.test(one, other);
    }

    private void add(@Nullable Block block) {
        if (block != null && seen.add(new Likeness(block))) {
            int n = blocks.size();
            if (volumes.length == n) {
                extents = Arrays.copyOf(extents, 6 * n + 3);
                volumes = Arrays.copyOf(volumes, 2 * n + 1);
            }
            extents[3 * n] = block.dx();
            extents[3 * n + 1] = block.dy();
            extents[3 * n + 2] = block.dz();
            volumes[n] = block.volume();
            blocks.add(block);
        }
    }
}
