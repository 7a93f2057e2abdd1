package org.shelterwright.layouts.ledger.stowage;

import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.inside.InPlace;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.Scene;

/**
 * What must not be laid over stands upright. Demand: number of pieces that do not, of 0.
 *
 * <p>Source: ISO 780, "this way up" (from memory).
 */
final class UprightKept extends PlaceLimit {
    UprightKept() {
        super("stowage.upright", "Pieces upright", Severity.HARD, Source.fromMemory("ISO 780", "this way up"));
    }

    @Override
    void assess(Scene scene, FilledPlace place, Rows rows) {
        List<String> laid = place.pieces().stream()
                .filter(piece -> piece.loose().upright() && !piece.posture().upright())
                .map(InPlace::name)
                .toList();
        rows.add(
                laid.isEmpty()
                        ? draft(rows, place).held("What must stand upright in the " + place.name() + " does.")
                        : draft(rows, place)
                                .mend("Stand it upright, or put it into a higher place.")
                                .atMost(
                                        laid.size(),
                                        0,
                                        "pieces",
                                        Wording.list(laid) + " in the " + place.name() + (laid.size() == 1 ? " is" : " are")
                                                + " laid over, and must stand upright."));
    }
}
