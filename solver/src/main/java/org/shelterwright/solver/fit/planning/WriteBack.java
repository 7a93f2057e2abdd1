package org.shelterwright.solver.fit.planning;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.shelterwright.solver.fit.model.Spot;

/** Writes spots into the working plan, telling the score director. */
final class WriteBack {
    private WriteBack() {}

    static void to(ScoreDirector<FitPlan> director, @Nullable Spot[] spots) {
        for (Stand stand : director.getWorkingSolution().getStands()) {
            change(director, stand, spots[stand.getSlot()]);
        }
        director.triggerVariableListeners();
    }

    static void change(ScoreDirector<FitPlan> director, Stand stand, @Nullable Spot spot) {
        if (!Objects.equals(stand.getSpot(), spot)) {
            director.beforeVariableChanged(stand, "spot");
            stand.setSpot(spot);
            director.afterVariableChanged(stand, "spot");
        }
    }
}
