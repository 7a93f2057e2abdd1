package org.shelterwright.layouts.ledger.axles;

import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mass.GapRow;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Extreme;
import org.shelterwright.layouts.state.Gap;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.VehicleLoads;

/**
 * No axle and no side of one lifts off in any load state: each wheel load is above zero. With three axle groups or more a lifted
 * one makes the model of their sharing void, and the row not assessed.
 */
final class AxleContact extends VehicleLimit {
    AxleContact() {
        super(
                "axles.contact",
                "Wheels on the ground",
                Source.commonPractice("Every wheel bears load when the vehicle stands level"),
                "The brief names no carrier.");
    }

    @Override
    void assess(Scene scene, VehicleLoads vehicle, Rows rows) {
        LoadStates states = LoadStates.of(scene);
        RowDraft draft = rows.draft(this, "Wheels of " + vehicle.vehicle().name() + " on the ground");
        Extreme least = null;
        String which = "";
        for (int i = 0; i < vehicle.vehicle().axles().size(); i++) {
            List<Gap> gaps = states.gaps(vehicle.axleLoad(i));
            if (!gaps.isEmpty()) {
                rows.add(GapRow.of(draft, gaps));
                return;
            }
            for (boolean left : new boolean[] {true, false}) {
                Extreme one = states.least(vehicle.wheelLoad(i, left), vehicle.modes());
                if (least == null || one.worst() < least.worst()) {
                    least = one;
                    which = (left ? "left" : "right") + " wheels of "
                            + name(vehicle, vehicle.vehicle().axles().get(i));
                }
            }
        }
        if (least != null) {
            rows.add(lifted(draft, least, which, vehicle.axleGroups()));
        }
    }

    private static Row lifted(RowDraft draft, Extreme least, String which, int groups) {
        draft.state(least.state().text());
        if (least.worst() >= 0) {
            return draft.nominal(least.nominal())
                    .atLeast(
                            0, least.worst(), "kg", "The " + which + " bear least: " + Amounts.kg(least.worst()) + ".");
        }
        if (groups > 2) {
            return draft.notAssessed("The " + which + " would lift off, so that the loads of " + groups
                    + " axle groups cannot be told.");
        }
        return draft.nominal(least.nominal())
                .mend("Move mass towards these wheels.")
                .atLeast(
                        0,
                        least.worst(),
                        "kg",
                        "The " + which + " lift off: " + Amounts.kg(-least.worst()) + " are missing.");
    }
}
