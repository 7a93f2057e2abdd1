package org.shelterwright.solver.inside.rack;

import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.variable.PlanningVariable;
import org.shelterwright.solver.inside.rack.RackProblem.Seat;

/** The planning entity: where one piece sits. */
@PlanningEntity
public class RackStand {
    @PlanningId
    private int index;

    @PlanningVariable(valueRangeProviderRefs = "seats")
    private @Nullable Seat seat;

    /** For the cloner. */
    public RackStand() {}

    RackStand(int index, Seat seat) {
        this.index = index;
        this.seat = seat;
    }

    public int getIndex() {
        return index;
    }

    public @Nullable Seat getSeat() {
        return seat;
    }

    public void setSeat(@Nullable Seat changed) {
        this.seat = changed;
    }
}
