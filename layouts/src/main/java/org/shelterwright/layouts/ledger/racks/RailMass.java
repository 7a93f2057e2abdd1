package org.shelterwright.layouts.ledger.racks;

import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.MassModel;

/**
 * No upright bears more than its rating; see {@link RailLoads} for how the pieces share.
 *
 * <p>Source: statics; the rating of the uprights in the catalog.
 */
final class RailMass extends BayLimit {
    RailMass() {
        super(
                "racks.upright",
                "Load of an upright",
                Severity.HARD,
                Source.stated("Catalog", "rating of the uprights of the bay"));
    }

    @Override
    void assess(Scene scene, FilledBay bay, Rows rows) {
        MassModel model = new MassModel(scene.rules());
        List<String> missing = bay.withoutMass(model);
        RowDraft draft = draft(rows, bay);
        Double rating = bay.bay().railKg();
        if (!missing.isEmpty()) {
            rows.add(missing(draft, "mass", missing));
        } else if (rating == null) {
            rows.add(draft.mend("Give railKg of the bay in item " + bay.unit().item().id() + ".")
                    .notAssessed("What one upright of " + bay.name() + " bears is not stated."));
        } else {
            RailLoads loads = RailLoads.of(bay, model);
            int most = loads.most();
            rows.add(draft.mend("Hold heavy pieces at the rear too, or put one into another rack.")
                    .atMost(
                            loads.kg(most),
                            rating,
                            "kg",
                            "The " + RailLoads.name(most) + " of " + bay.name() + " bears "
                                    + Amounts.kg(loads.kg(most)) + " of " + Amounts.kg(rating) + "."));
        }
    }
}
