package org.shelterwright.solver.load.lane;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.solver.fit.kernel.Dice;
import org.shelterwright.solver.load.beam.Beam;
import org.shelterwright.solver.load.beam.Effort;
import org.shelterwright.solver.load.beam.Trace;
import org.shelterwright.solver.load.block.Block;
import org.shelterwright.solver.load.block.BlockTable;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.Load;
import org.shelterwright.solver.load.model.Stowed;
import org.shelterwright.solver.load.packing.Chooser;
import org.shelterwright.solver.load.packing.Packing;
import org.shelterwright.solver.load.packing.PutRule;
import org.shelterwright.solver.load.packing.Scoring;
import org.shelterwright.solver.load.refill.Refill;

/** One search: beams of growing width, then refilling. Runs on one thread. */
public final class Lane {
    private static final double WIDEST = 1_000;

    private final BlockTable table;
    private final Tuning tuning;
    private final PutRule rule;
    private final Dice dice;
    private final Trace best = new Trace();

    public Lane(BlockTable table, Tuning tuning, PutRule rule, Dice dice) {
        this.table = table;
        this.tuning = tuning;
        this.rule = rule;
        this.dice = dice;
    }

    /**
     * Searches until the work is done.
     *
     * @param found called whenever there is a new best
     */
    public void run(Effort effort, Runnable found) {
        if (table.size() == 0) {
            return;
        }
        Packing start = new Packing(table);
        Beam beam = new Beam(new Chooser(table, rule), start);
        Scoring scoring = Scoring.of(tuning.alpha(), tuning.rule());
        effort.aim(goal());
        first(start, beam, scoring);
        double width = 4;
        double before = Double.NEGATIVE_INFINITY;
        effort.bound(tuning.beamShare());
        while (!effort.over()) {
            start.clear(tuning.rule());
            beam.run(start, (int) Math.ceil(width), scoring, effort, best);
            if (best.worth() > before) {
                before = best.worth();
                found.run();
            }
            width = Math.min(WIDEST, width * Math.sqrt(2));
        }
        effort.bound(1);
        if (!effort.over() && best.size() > 0) {
            new Refill(beam, start, dice).run(best, scoring, effort, found);
        }
    }

    /** Whatever the budget, there is a load: that of the best block for each space in turn. */
    private void first(Packing start, Beam beam, Scoring scoring) {
        double worth = beam.complete(start, scoring);
        best.take(start, worth);
    }

    /** Everything is in, or the room is full. */
    private double goal() {
        double all = 0;
        double most = 0;
        for (CargoKind kind : table.problem().kinds()) {
            all += kind.count() * kind.volume() * kind.worth();
            most = Math.max(most, kind.worth());
        }
        return Math.min(all, most * table.problem().roomVolume()) * (1 - 1e-12);
    }

    /** The best load so far. */
    public Trace best() {
        return best;
    }

    /** The pieces of a load, from the lowest up. */
    public Load load() {
        List<Stowed> stowed = new ArrayList<>();
        for (int i : best.upwards()) {
            Block block = table.block(best.block(i));
            int[] parts = block.parts();
            for (int p = 0; p < parts.length; p += 7) {
                int x0 = best.x(i) + (best.mirrorX(i) ? block.dx() - parts[p + 1] - parts[p + 4] : parts[p + 1]);
                int y0 = best.y(i) + (best.mirrorY(i) ? block.dy() - parts[p + 2] - parts[p + 5] : parts[p + 2]);
                int z0 = best.z(i) + parts[p + 3];
                stowed.add(new Stowed(
                        parts[p], new Box(x0, y0, z0, x0 + parts[p + 4], y0 + parts[p + 5], z0 + parts[p + 6])));
            }
        }
        stowed.sort((a, b) -> Integer.compare(a.box().z0(), b.box().z0()));
        return new Load(stowed);
    }
}
