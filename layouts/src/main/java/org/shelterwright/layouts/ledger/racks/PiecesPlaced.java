package org.shelterwright.layouts.ledger.racks;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.inside.Interiors;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.Scene;

/**
 * Every rack-mounted piece of the brief has a place in a bay, in the unit that the brief asks for. Demand: number of pieces that
 * have not, of 0.
 *
 * <p>Source: the brief.
 */
final class PiecesPlaced extends NamedLimit implements Limit.OfWhole {
    PiecesPlaced() {
        super(
                "racks.placed",
                Subject.RACKS,
                "Rack-mounted pieces to place",
                Severity.HARD,
                Source.stated("Brief", "inventory"),
                "The brief lists no rack-mounted pieces.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        Interiors interiors = scene.interiors();
        if (!interiors.anyRacked()) {
            return;
        }
        List<String> open = new ArrayList<>();
        interiors.rackedToPlace().forEach(spec -> open.add(spec.name()));
        List<String> units = new ArrayList<>();
        interiors.racks().forEach((unit, pieces) -> pieces.stream()
                .filter(piece -> piece.spec().within() != null && !unit.equals(piece.spec().within()))
                .forEach(piece -> {
                    open.add(piece.name() + " (in " + unit + ", not in " + piece.spec().within() + ")");
                    units.add(unit);
                }));
        if (open.isEmpty()) {
            rows.add(rows.draft(this).held("Every rack-mounted piece has its place."));
            return;
        }
        rows.add(rows.draft(this)
                .units(units.stream().distinct().toList())
                .mend("Put them into a bay with free height units, or take them out of the inventory.")
                .atMost(open.size(), 0, "pieces", Wording.count(open.size(), "piece") + " to place: "
                        + Wording.list(open) + "."));
    }
}
