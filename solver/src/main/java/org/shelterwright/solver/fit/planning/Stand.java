package org.shelterwright.solver.fit.planning;

import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.entity.PlanningPin;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.variable.PlanningVariable;
import org.shelterwright.solver.fit.model.Spot;

/** The planning entity: one slot with the spot that it has now. */
@PlanningEntity
public class Stand {
    @PlanningId
    private int slot;

    @PlanningPin
    private boolean pinned;

    @PlanningVariable(valueRangeProviderRefs = "spots", nullable = true)
    private @Nullable Spot spot;

    /** For the cloner. */
    public Stand() {}

    Stand(int slot, boolean pinned, @Nullable Spot spot) {
        this.slot = slot;
        this.pinned = pinned;
        this.spot = spot;
    }

    public int getSlot() {
        return slot;
    }

    public @Nullable Spot getSpot() {
        return spot;
    }

    public void setSpot(@Nullable Spot changed) {
        this.spot = changed;
    }

    public boolean isPinned() {
        return pinned;
    }
}
