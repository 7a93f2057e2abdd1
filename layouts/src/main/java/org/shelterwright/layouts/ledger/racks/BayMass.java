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
 * The pieces of a bay weigh no more than it bears: Σm ≤ rating, masses with growth and uncertainty.
 *
 * <p>Source: the rating of the bay in the catalog.
 */
final class BayMass extends BayLimit {
    BayMass() {
        super(
                "racks.mass",
                "Mass in the rack",
                Severity.HARD,
                Source.stated("Catalog", "rating of the bay"));
    }

    @Override
    void assess(Scene scene, FilledBay bay, Rows rows) {
        MassModel model = new MassModel(scene.rules());
        List<String> missing = bay.withoutMass(model);
        RowDraft draft = draft(rows, bay);
        Double rating = bay.bay().ratingKg();
        if (!missing.isEmpty()) {
            rows.add(missing(draft, "mass", missing));
        } else if (rating == null) {
            rows.add(draft.mend("Give ratingKg of the bay in item " + bay.unit().item().id() + ".")
                    .notAssessed("What the bay of " + bay.name() + " bears is not stated."));
        } else {
            double kg = bay.pieces().stream()
                    .mapToDouble(piece -> Masses.worstKg(model, piece).orElse(0))
                    .sum();
            rows.add(draft.mend("Put the heaviest piece into another rack.")
                    .atMost(
                            kg,
                            rating,
                            "kg",
                            "The pieces in " + bay.name() + " weigh " + Amounts.kg(kg) + "; it bears "
                                    + Amounts.kg(rating) + "."));
        }
    }
}
