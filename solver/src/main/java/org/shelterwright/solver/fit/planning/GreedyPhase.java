package org.shelterwright.solver.fit.planning;

import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.phase.custom.CustomPhaseCommand;
import org.shelterwright.solver.fit.kernel.Construction;
import org.shelterwright.solver.fit.kernel.State;

/** First phase: the first idea of the start layout where it fits an option (first lane only), the rest greedily. */
final class GreedyPhase implements CustomPhaseCommand<FitPlan> {
    @Override
    public void changeWorkingSolution(ScoreDirector<FitPlan> director) {
        FitPlan plan = director.getWorkingSolution();
        LaneDesk desk = plan.desk();
        State state = new State(desk.problem());
        if (desk.lane() == 0) {
            state.restore(desk.problem().start());
        }
        desk.meter().add(new Construction(state, desk.dice()).placeAll(0.3 * desk.lane()));
        WriteBack.to(director, state.spots());
    }
}
