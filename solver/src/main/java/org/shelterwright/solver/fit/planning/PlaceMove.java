package org.shelterwright.solver.fit.planning;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;
import org.shelterwright.solver.fit.model.Spot;

/** Puts some stands at new spots. */
final class PlaceMove extends AbstractMove<FitPlan> {
    private final int[] slots;
    private final @Nullable Spot[] spots;

    PlaceMove(int[] slots, @Nullable Spot[] spots) {
        this.slots = slots;
        this.spots = spots;
    }

    @Override
    public boolean isMoveDoable(ScoreDirector<FitPlan> director) {
        return slots.length > 0;
    }

    @Override
    protected PlaceMove createUndoMove(ScoreDirector<FitPlan> director) {
        List<Stand> stands = director.getWorkingSolution().getStands();
        Spot[] before = Arrays.stream(slots)
                .mapToObj(slot -> stands.get(slot).getSpot())
                .toArray(Spot[]::new);
        return new PlaceMove(slots, before);
    }

    @Override
    protected void doMoveOnGenuineVariables(ScoreDirector<FitPlan> director) {
        List<Stand> stands = director.getWorkingSolution().getStands();
        for (int i = 0; i < slots.length; i++) {
            WriteBack.change(director, stands.get(slots[i]), spots[i]);
        }
    }

    @Override
    public String toString() {
        return Arrays.toString(slots) + " to " + Arrays.toString(spots);
    }
}
