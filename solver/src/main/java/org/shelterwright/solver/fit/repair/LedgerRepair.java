package org.shelterwright.solver.fit.repair;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.LedgerBuilder;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.fit.distinct.LedgerScore;
import org.shelterwright.solver.fit.kernel.Dice;
import org.shelterwright.solver.fit.kernel.MoveMaker;
import org.shelterwright.solver.fit.kernel.MoveMaker.Step;
import org.shelterwright.solver.fit.kernel.State;
import org.shelterwright.solver.fit.model.Amounts;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Slot;
import org.shelterwright.solver.fit.model.Spot;

/**
 * Hill climbing on the live ledger: moves the units that broken rows name, turns down at once what the compiled terms
 * find worse, and keeps what the ledger finds better. Limits that no move bears on, and those that are dear to answer, are left out. For
 * layouts that break few rows. Not for several threads.
 */
public final class LedgerRepair {
    /** Moves that are made up for each one that reaches the ledger. */
    private static final int TRIES_AN_ASKING = 60;

    private final Checker checker;
    private final FitProblem problem;
    private final Dice dice;
    private final State state;
    private final LedgerBuilder live;
    private Scene scene;
    private Ledger ledger;
    private Amounts score;

    /**
     * Begins at a layout of the problem.
     *
     * @param seed the same seed mends alike
     */
    public LedgerRepair(Checker checker, FitProblem problem, Layout layout, long seed) {
        this.checker = checker;
        this.problem = problem;
        this.dice = new Dice(seed);
        this.state = new State(problem);
        this.live = new LedgerBuilder(checker.book().ofPlaces());
        this.scene = Scene.of(layout, problem.scene().rules());
        state.restore(problem.spots(layout));
        this.ledger = live.whileMoving(scene);
        this.score = score(ledger);
    }

    /**
     * Mends until nothing is broken, the ledger was asked often enough, or someone asks to end.
     *
     * @param askings how often the ledger may be asked; each costs as much as one live check
     * @return the layout, mended as far as it went
     */
    public Layout mend(int askings, BooleanSupplier asked) {
        MoveMaker maker = new MoveMaker(state, dice);
        int left = askings;
        long tries = (long) askings * TRIES_AN_ASKING;
        while (left > 0 && tries-- > 0 && ledger.count(Verdict.BROKEN) > 0 && !asked.getAsBoolean()) {
            List<Integer> named = named();
            boolean aim = !named.isEmpty() && dice.below(4) != 0;
            List<Step> steps = aim ? maker.next(named.get(dice.below(named.size()))) : maker.next();
            if (!steps.isEmpty() && attempt(steps)) {
                left--;
            }
        }
        return scene.layout();
    }

    /** Whether nothing is broken any more, of the limits that are looked at. */
    public boolean mended() {
        return ledger.count(Verdict.BROKEN) == 0;
    }

    /** True if the ledger was asked. */
    private boolean attempt(List<Step> steps) {
        Amounts before = state.score();
        List<@Nullable Spot> old = new ArrayList<>();
        for (Step step : steps) {
            old.add(state.spot(step.slot()));
            state.put(step.slot(), step.spot());
        }
        Amounts after = state.score();
        if (after.hard() > before.hard() || after.medium() > before.medium()) {
            undo(steps, old);
            return false;
        }
        Scene moved = scene;
        Layout layout = problem.layout(state.spots());
        for (Step step : steps) {
            var placement =
                    layout.placements().get(problem.slot(step.slot()).unit().id());
            if (placement != null) {
                moved = moved.with(placement);
            }
        }
        Ledger found = live.whileMoving(moved);
        Amounts foundScore = score(found);
        if (foundScore.compareTo(score) <= 0) {
            scene = moved;
            ledger = found;
            score = foundScore;
        } else {
            undo(steps, old);
            live.whileMoving(scene);
        }
        return true;
    }

    private void undo(List<Step> steps, List<@Nullable Spot> old) {
        for (int i = 0; i < steps.size(); i++) {
            Spot spot = old.get(i);
            if (spot != null) {
                state.put(steps.get(i).slot(), spot);
            }
        }
    }

    private Amounts score(Ledger of) {
        return LedgerScore.of(of, checker.book(), state.score().soft());
    }

    /** Movable slots of the units that broken rows name. */
    private List<Integer> named() {
        Set<String> units = new LinkedHashSet<>();
        for (Row row : ledger.rows()) {
            if (row.verdict() == Verdict.BROKEN) {
                units.addAll(row.units());
            }
        }
        List<Integer> slots = new ArrayList<>();
        for (Slot slot : problem.slots()) {
            if (slot.movable()
                    && state.isPlaced(slot.index())
                    && units.contains(slot.unit().id())) {
                slots.add(slot.index());
            }
        }
        return slots;
    }
}
