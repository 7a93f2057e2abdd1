package org.shelterwright.solver.fit.planning;

import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.score.calculator.IncrementalScoreCalculator;
import org.shelterwright.solver.fit.kernel.State;
import org.shelterwright.solver.fit.model.Amounts;
import org.shelterwright.solver.fit.model.Spot;

/** Scores a plan with the same state and terms as the annealing, move by move. */
public class PlanScore implements IncrementalScoreCalculator<FitPlan, HardMediumSoftLongScore> {
    private State state;

    /** Made by the planning engine, which always resets it before use. */
    @SuppressWarnings("NullAway.Init")
    public PlanScore() {}

    @Override
    public void resetWorkingSolution(FitPlan plan) {
        state = new State(plan.desk().problem());
        state.restore(plan.spots());
        plan.desk().planes().touch(state);
        plan.desk().live(state);
    }

    @Override
    public void beforeEntityAdded(Object entity) {}

    @Override
    public void afterEntityAdded(Object entity) {
        place((Stand) entity);
    }

    @Override
    public void beforeVariableChanged(Object entity, String variable) {}

    @Override
    public void afterVariableChanged(Object entity, String variable) {
        place((Stand) entity);
    }

    @Override
    public void beforeEntityRemoved(Object entity) {
        state.remove(((Stand) entity).getSlot());
    }

    @Override
    public void afterEntityRemoved(Object entity) {}

    private void place(Stand stand) {
        Spot spot = stand.getSpot();
        if (spot == null) {
            state.remove(stand.getSlot());
        } else {
            state.put(stand.getSlot(), spot);
        }
    }

    @Override
    public HardMediumSoftLongScore calculateScore() {
        state.walk();
        Amounts score = state.score();
        return HardMediumSoftLongScore.of(-score.hard(), -score.medium(), -score.soft());
    }
}
