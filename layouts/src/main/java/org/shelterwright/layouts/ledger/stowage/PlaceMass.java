package org.shelterwright.layouts.ledger.stowage;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.inside.InPlace;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.MassModel;

/**
 * The pieces in a place weigh no more than it bears: Σm ≤ rating, masses with growth and uncertainty.
 *
 * <p>Source: the rating of the place in the catalog.
 */
final class PlaceMass extends PlaceLimit {
    PlaceMass() {
        super(
                "stowage.mass",
                "Mass in a place",
                Severity.HARD,
                Source.stated("Catalog", "rating of the stowage places"));
    }

    @Override
    void assess(Scene scene, FilledPlace place, Rows rows) {
        MassModel model = new MassModel(scene.rules());
        double sum = 0;
        List<String> missing = new ArrayList<>();
        for (InPlace piece : place.pieces()) {
            OptionalDouble grown = model.grownKg(piece.piece().mass());
            OptionalDouble range = model.uncertaintyKg(piece.piece().mass());
            sum += grown.orElse(0) + range.orElse(0);
            if (grown.isEmpty() || range.isEmpty()) {
                missing.add(piece.name());
            }
        }
        if (!missing.isEmpty()) {
            rows.add(draft(rows, place)
                    .mend("State it in the catalog entry of the piece.")
                    .notAssessed("The mass of " + Wording.list(missing) + " in the " + place.name()
                            + (missing.size() == 1 ? " is" : " are") + " not stated."));
            return;
        }
        rows.add(draft(rows, place)
                .mend("Put a piece into another place.")
                .atMost(
                        sum,
                        place.stowage().ratingKg(),
                        "kg",
                        "The pieces in the " + place.name() + " weigh " + Amounts.kg(sum) + "; it bears "
                                + Amounts.kg(place.stowage().ratingKg()) + "."));
    }
}
