package org.shelterwright.layouts.ledger.mass;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Extreme;
import org.shelterwright.layouts.state.Gap;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.Mode;
import org.shelterwright.layouts.state.Quantity;

/** Rows of loads (kg) that must not exceed, or not fall below, a figure in any load state. */
public final class LoadRow {
    private LoadRow() {}

    /**
     * A load against its capacity.
     *
     * @param what begins the finding, such as "The rear axle of the truck bears"
     * @param extra more about the capacity, such as " (34 000 lb)"; may be empty
     */
    public static Row atMost(
            RowDraft draft,
            Scene scene,
            Quantity load,
            List<Mode> modes,
            double capacityKg,
            String what,
            String extra) {
        LoadStates states = LoadStates.of(scene);
        List<Gap> gaps = states.gaps(load);
        if (!gaps.isEmpty()) {
            return GapRow.of(draft, gaps);
        }
        Extreme most = states.most(load, modes);
        double over = most.worst() - capacityKg;
        if (over > 0) {
            draft.mend(mend(scene, load, -over));
        }
        String rest = over > 0 ? Amounts.kg(over) + " too much." : Amounts.kg(-over) + " are left.";
        return draft.state(most.state().text())
                .nominal(most.nominal())
                .atMost(
                        most.worst(),
                        capacityKg,
                        "kg",
                        what + " at most " + Amounts.kg(most.worst()) + " of " + Amounts.kg(capacityKg) + extra + ": "
                                + rest);
    }

    /** A load of which at least the needed one must be there. */
    public static Row atLeast(
            RowDraft draft, Scene scene, Quantity load, List<Mode> modes, double neededKg, String what) {
        LoadStates states = LoadStates.of(scene);
        List<Gap> gaps = states.gaps(load);
        if (!gaps.isEmpty()) {
            return GapRow.of(draft, gaps);
        }
        Extreme least = states.least(load, modes);
        double under = neededKg - least.worst();
        if (under > 0) {
            draft.mend(mend(scene, load, under));
        }
        String rest = under > 0 ? Amounts.kg(under) + " too little." : Amounts.kg(-under) + " more than needed.";
        return draft.state(least.state().text())
                .nominal(least.nominal())
                .atLeast(
                        neededKg,
                        least.worst(),
                        "kg",
                        what + " at least " + Amounts.kg(least.worst()) + ", and needs " + Amounts.kg(neededKg) + ": "
                                + rest);
    }

    /** Says how to bring a load up by so much, by moving mass along the body. */
    private static @Nullable String mend(Scene scene, Quantity load, double byKg) {
        double perX = load.body().perX();
        if (perX == 0) {
            return byKg < 0 ? "Take out at least " + Amounts.kg(-byKg) + ", or move it elsewhere." : null;
        }
        return ShiftMend.of(scene, Axis.X, byKg / perX);
    }
}
