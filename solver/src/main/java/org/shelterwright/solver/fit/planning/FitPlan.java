package org.shelterwright.solver.fit.planning;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.solution.ProblemFactProperty;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Slot;
import org.shelterwright.solver.fit.model.Spot;

/** The planning solution: all stands of a problem. */
@PlanningSolution
public class FitPlan {
    @ProblemFactProperty
    private @Nullable LaneDesk desk;

    @PlanningEntityCollectionProperty
    private List<Stand> stands = new ArrayList<>();

    @PlanningScore
    private @Nullable HardMediumSoftLongScore score;

    /** For the cloner. */
    public FitPlan() {}

    FitPlan(LaneDesk desk) {
        this.desk = desk;
        FitProblem problem = desk.problem();
        for (Slot slot : problem.slots()) {
            stands.add(new Stand(slot.index(), !slot.movable(), null));
        }
    }

    /** The spots that are taken; own moves make new ones. */
    @ValueRangeProvider(id = "spots")
    public List<Spot> spotRange() {
        List<Spot> range = new ArrayList<>();
        for (Stand stand : stands) {
            Spot spot = stand.getSpot();
            if (spot != null) {
                range.add(spot);
            }
        }
        return range.isEmpty() ? List.of(new Spot(0, 0, 0, 0)) : range;
    }

    LaneDesk desk() {
        LaneDesk found = desk;
        if (found == null) {
            throw new IllegalStateException("A plan belongs to a lane.");
        }
        return found;
    }

    public List<Stand> getStands() {
        return stands;
    }

    public @Nullable HardMediumSoftLongScore getScore() {
        return score;
    }

    public void setScore(@Nullable HardMediumSoftLongScore changed) {
        this.score = changed;
    }

    @Nullable
    Spot[] spots() {
        return stands.stream().map(Stand::getSpot).toArray(Spot[]::new);
    }
}
