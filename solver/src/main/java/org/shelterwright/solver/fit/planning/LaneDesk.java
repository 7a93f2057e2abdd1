package org.shelterwright.solver.fit.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.shelterwright.solver.fit.kernel.Best;
import org.shelterwright.solver.fit.kernel.Dice;
import org.shelterwright.solver.fit.kernel.Meter;
import org.shelterwright.solver.fit.kernel.Planes;
import org.shelterwright.solver.fit.kernel.State;
import org.shelterwright.solver.fit.model.Amounts;
import org.shelterwright.solver.fit.model.FitProblem;

/** What the phases of one lane share: problem, dice, meter, the state of the local search, and what was found. */
public final class LaneDesk {
    private final FitProblem problem;
    private final int lane;
    private final Dice dice;
    private final Meter meter;
    private final Consumer<Amounts> improved;
    private final List<Best> found = new ArrayList<>();
    private final Planes planes;
    private @Nullable State live;

    LaneDesk(FitProblem problem, int lane, Dice dice, Meter meter, Planes planes, Consumer<Amounts> improved) {
        this.problem = problem;
        this.lane = lane;
        this.dice = dice;
        this.meter = meter;
        this.planes = planes;
        this.improved = improved;
    }

    FitProblem problem() {
        return problem;
    }

    int lane() {
        return lane;
    }

    Dice dice() {
        return dice;
    }

    Meter meter() {
        return meter;
    }

    Planes planes() {
        return planes;
    }

    Consumer<Amounts> improved() {
        return improved;
    }

    /** The best of each round, for alternatives. */
    List<Best> found() {
        return found;
    }

    State live() {
        State state = live;
        if (state == null) {
            throw new IllegalStateException("The local search has not begun.");
        }
        return state;
    }

    void live(State state) {
        live = state;
    }
}
