package org.shelterwright.layouts.ledger.stowage;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.inside.InPlace;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.Scene;

/**
 * Nothing lies on a fragile piece. Demand: number of fragile pieces with something on them, of 0.
 *
 * <p>Source: ISO 780, "fragile" and "do not stack" (from memory).
 */
final class NothingOnFragile extends PlaceLimit {
    NothingOnFragile() {
        super(
                "stowage.fragile",
                "Nothing on fragile pieces",
                Severity.MEDIUM,
                Source.fromMemory("ISO 780", "fragile; do not stack"));
    }

    @Override
    void assess(Scene scene, FilledPlace place, Rows rows) {
        Set<String> pressed = new LinkedHashSet<>();
        for (InPlace piece : place.pieces()) {
            Resting.of(piece, place).on().stream()
                    .filter(under -> under.loose().fragile())
                    .forEach(under -> pressed.add(under.name()));
        }
        List<String> names = List.copyOf(pressed);
        rows.add(
                names.isEmpty()
                        ? draft(rows, place).held("Nothing lies on a fragile piece in the " + place.name() + ".")
                        : draft(rows, place)
                                .mend("Lay what is on it beside it.")
                                .atMost(
                                        names.size(),
                                        0,
                                        "pieces",
                                        "Something lies on " + Wording.list(names) + " in the " + place.name()
                                                + ", which " + (names.size() == 1 ? "is" : "are") + " fragile."));
    }
}
