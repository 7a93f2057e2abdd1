package org.shelterwright.solver.fit.planning;

import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.phase.custom.CustomPhaseCommand;
import org.shelterwright.solver.fit.kernel.Annealer;
import org.shelterwright.solver.fit.kernel.Best;
import org.shelterwright.solver.fit.kernel.Construction;
import org.shelterwright.solver.fit.kernel.Dice;
import org.shelterwright.solver.fit.kernel.Schedule;
import org.shelterwright.solver.fit.kernel.State;
import org.shelterwright.solver.fit.kernel.Weights;
import org.shelterwright.solver.fit.model.Amounts;
import org.shelterwright.solver.fit.model.Spot;

/**
 * Second phase: rounds of annealing. Every other round begins afresh, the rest warm up the best so far. It ends when
 * the meter is over, or when every limit holds and several rounds brought nothing.
 */
final class AnnealPhase implements CustomPhaseCommand<FitPlan> {
    private static final Weights CHEAP = new Weights(0.5, 0.5);
    private static final Weights TEPID = new Weights(3, 3);
    private static final Weights DEAR = new Weights(10, 7.5);

    /** With the prices, a fresh round freezes from some 200 mm of overlap to 1 mm, a warm one from 33 mm. */
    private static final double HOT = 100;

    private static final double COLD = 10;
    private static final int PATIENCE = 3;

    /** A fresh round and the warm one that follows it. */
    private static final int ROUNDS = 2;

    private final long roundMoves;

    AnnealPhase(long roundMoves) {
        this.roundMoves = roundMoves;
    }

    @Override
    public void changeWorkingSolution(ScoreDirector<FitPlan> director) {
        FitPlan plan = director.getWorkingSolution();
        LaneDesk desk = plan.desk();
        State state = new State(desk.problem());
        state.restore(plan.spots());
        desk.planes().touch(state);
        state.walk();
        Best best = new Best();
        best.offer(state);
        desk.improved().accept(state.score());
        Annealer annealer = new Annealer(state, desk.dice(), desk.meter(), desk.planes(), desk.improved());
        int idle = 0;
        for (int round = 0; !desk.meter().over() && idle < PATIENCE; round++) {
            boolean fresh = round % ROUNDS == 0;
            if (round > 0) {
                begin(state, fresh, best, desk.dice());
            }
            desk.planes().touch(state);
            state.walk();
            Best ofRound = new Best();
            ofRound.offer(state);
            annealer.round(new Schedule(roundMoves, HOT, COLD, fresh ? CHEAP : TEPID, DEAR, fresh ? 0.3 : 0), ofRound);
            desk.found().add(ofRound);
            boolean better = merge(best, ofRound);
            idle = better || !holds(best) ? 0 : idle + 1;
        }
        @Nullable Spot @Nullable [] spots = best.spots();
        if (spots != null) {
            WriteBack.to(director, spots);
        }
    }

    private static void begin(State state, boolean fresh, Best best, Dice dice) {
        @Nullable Spot @Nullable [] spots = best.spots();
        if (fresh || spots == null) {
            state.problem().slots().stream().filter(slot -> slot.movable()).forEach(slot -> state.remove(slot.index()));
            new Construction(state, dice).placeAll(1);
        } else {
            state.restore(spots);
        }
    }

    private static boolean merge(Best best, Best other) {
        Amounts score = other.score();
        Amounts before = best.score();
        if (score != null && (before == null || score.compareTo(before) < 0)) {
            best.take(other);
            return true;
        }
        return false;
    }

    private static boolean holds(Best best) {
        Amounts score = best.score();
        return score != null && score.holds();
    }
}
