package org.shelterwright.layouts.ledger.transport.place;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.scene.LegScene;

/** Every piece of the journey goes on every leg: on its own wheels, drawn, or on a car. Source: the journey itself. */
final class EverythingGoes extends LegLimit {
    EverythingGoes() {
        super(
                "everything-goes",
                "Everything goes",
                Source.commonPractice("nothing is left behind"),
                "The journey has no pieces.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        List<Piece> all = leg.journey().journey().pieces();
        List<String> left = new ArrayList<>();
        for (Piece piece : all) {
            boolean driven = leg.drives().stream()
                    .anyMatch(one -> one.vehicle().id().equals(piece.id())
                            || one.trailer().map(t -> t.id().equals(piece.id())).orElse(false));
            boolean loaded =
                    leg.loads().stream().anyMatch(load -> load.piece(piece.id()).isPresent());
            if (!driven && !loaded) {
                left.add(piece.id());
            }
        }
        if (all.isEmpty()) {
            return;
        }
        String finding = left.isEmpty()
                ? "All " + Wording.count(all.size(), "piece") + " of the journey go."
                : Wording.list(left.stream()
                                .map(id -> leg.journey().journey().nameOf(id))
                                .toList()) + (left.size() == 1 ? " has" : " have") + " no place on this leg.";
        rows.add(draft(leg, rows)
                .units(left)
                .mend(left.isEmpty() ? null : "Put it on a car of this leg, or let it go on its own wheels.")
                .countedAtLeast(all.size(), all.size() - left.size(), "pieces", finding));
    }
}
