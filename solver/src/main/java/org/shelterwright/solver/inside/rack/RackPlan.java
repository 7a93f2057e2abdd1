package org.shelterwright.solver.inside.rack;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.solution.ProblemFactProperty;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import org.shelterwright.solver.inside.rack.RackProblem.Seat;

/** The planning solution: the stands of all pieces of a problem. */
@PlanningSolution
public class RackPlan {
    @ProblemFactProperty
    private @Nullable RackProblem problem;

    @PlanningEntityCollectionProperty
    private List<RackStand> stands = new ArrayList<>();

    @PlanningScore
    private @Nullable HardSoftLongScore score;

    /** For the cloner. */
    public RackPlan() {}

    RackPlan(RackProblem problem, List<Seat> seats) {
        this.problem = problem;
        for (int i = 0; i < seats.size(); i++) {
            stands.add(new RackStand(i, seats.get(i)));
        }
    }

    /** Every unit of every bay. */
    @ValueRangeProvider(id = "seats")
    public List<Seat> seatRange() {
        List<Seat> range = new ArrayList<>();
        List<RackBayRoom> bays = problem().bays();
        for (int b = 0; b < bays.size(); b++) {
            for (int u = 1; u <= bays.get(b).units(); u++) {
                range.add(new Seat(b, u));
            }
        }
        range.add(Seat.NONE);
        return range;
    }

    RackProblem problem() {
        RackProblem found = problem;
        if (found == null) {
            throw new IllegalStateException("A plan belongs to a problem.");
        }
        return found;
    }

    public List<RackStand> getStands() {
        return stands;
    }

    public @Nullable HardSoftLongScore getScore() {
        return score;
    }

    public void setScore(@Nullable HardSoftLongScore changed) {
        this.score = changed;
    }

    List<Seat> seats() {
        List<Seat> seats = new ArrayList<>();
        for (RackStand stand : stands) {
            Seat seat = stand.getSeat();
            seats.add(seat == null ? Seat.NONE : seat);
        }
        return seats;
    }
}
