package org.shelterwright.solver.load.block;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Practice.Door;

/**
 * Makes the blocks of a problem: first grids of equal pieces, then joins of two blocks, generation by generation, until
 * there are enough or the allowance of trials is used up. The idea is that of general blocks (Fanslau and Bortfeldt, A
 * tree search algorithm for solving the container loading problem, INFORMS Journal on Computing 22 (2010); from memory).
 */
public final class Blocks {
    /** Most trials to join two blocks: some tenths of a second. */
    private static final long MOST_TRIALS = 40_000_000;

    private final LoadProblem problem;
    private final Joining joining;
    private final int most;
    private final BiPredicate<CargoKind, CargoKind> compatible;
    private final List<Block> blocks = new ArrayList<>();
    private final Set<Likeness> seen = new LinkedHashSet<>();
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

    private Blocks(LoadProblem problem, double leastFill, int most, BiPredicate<CargoKind, CargoKind> compatible) {
        this.problem = problem;
        this.joining = new Joining(problem, leastFill);
        this.most = most;
        this.compatible = compatible;
    }

    /**
     * Makes the blocks.
     *
     * @param leastFill least share of a block's cuboid that its pieces fill
     * @param most how many blocks are enough; single pieces always come in
     * @param compatible whether pieces of two kinds may stand in one block
     */
    public static List<Block> of(
            LoadProblem problem, double leastFill, int most, BiPredicate<CargoKind, CargoKind> compatible) {
        return new Blocks(problem, leastFill, most, compatible).make();
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
        while (from < blocks.size() && blocks.size() < most && trials < MOST_TRIALS) {
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
                if (blocks.size() >= most || ++trials > MOST_TRIALS) {
                    return;
                }
                join(blocks.get(i), blocks.get(j));
            }
        }
    }

    private void join(Block a, Block b) {
        if (!compatible(a, b)) {
            return;
        }
        add(joining.alongX(a, b));
        add(joining.alongY(a, b));
        add(joining.onTop(a, b));
    }

    private boolean compatible(Block a, Block b) {
        CargoKind one = problem.kinds().get(a.kinds()[0]);
        CargoKind other = problem.kinds().get(b.kinds()[0]);
        return compatible.test(one, other);
    }

    private void add(@Nullable Block block) {
        if (block != null && seen.add(new Likeness(block))) {
            blocks.add(block);
        }
    }
}
