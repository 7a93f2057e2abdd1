package org.shelterwright.solver.bench.streams;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.solution.ProblemFactCollectionProperty;
import org.optaplanner.core.api.domain.solution.ProblemFactProperty;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.shelterwright.solver.bench.Lattice;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Slot;
import org.shelterwright.solver.fit.model.Spot;
import org.shelterwright.solver.fit.model.WishTerm;

/** The planning solution: all units of a problem, its wishes and its body. */
@PlanningSolution
public class StreamPlan {
    @PlanningEntityCollectionProperty
    private List<StreamUnit> units = new ArrayList<>();

    @ProblemFactCollectionProperty
    private List<WishTerm> wishes = new ArrayList<>();

    @ProblemFactProperty
    private @Nullable Room room;

    @PlanningScore
    private @Nullable HardMediumSoftLongScore score;

    /**
     * What the rules need to know of the body.
     *
     * @param problem its terms
     * @param middle middle plane (µm)
     */
    public record Room(FitProblem problem, int middle) {}

    /** For the cloner. */
    public StreamPlan() {}

    StreamPlan(FitProblem problem, @Nullable Spot[] start) {
        for (Slot slot : problem.slots()) {
            units.add(new StreamUnit(new Lattice(slot), start[slot.index()]));
        }
        wishes = new ArrayList<>(problem.wishes());
        room = new Room(problem, problem.inside().y() / 2);
    }

    @Nullable
    Spot[] spots() {
        return units.stream().map(StreamUnit::getSpot).toArray(Spot[]::new);
    }

    public @Nullable HardMediumSoftLongScore getScore() {
        return score;
    }

    public void setScore(@Nullable HardMediumSoftLongScore changed) {
        this.score = changed;
    }
}
