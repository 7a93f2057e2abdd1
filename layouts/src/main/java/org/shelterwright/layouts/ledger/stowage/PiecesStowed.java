package org.shelterwright.layouts.ledger.stowage;

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
 * Every loose piece of the brief has a place, in the unit that the brief asks for. Demand: number of pieces that have not, of 0.
 *
 * <p>Source: KKK-A-1822E 3.11.1.1, everything in closed compartments or fastened.
 */
final class PiecesStowed extends NamedLimit implements Limit.OfWhole {
    PiecesStowed() {
        super(
                "stowage.placed",
                Subject.STOWAGE,
                "Loose pieces to stow",
                Severity.HARD,
                Source.seen("KKK-A-1822E", "3.11.1.1, everything in closed compartments or fastened"),
                "The brief lists no loose pieces.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        Interiors interiors = scene.interiors();
        if (!interiors.anyLoose()) {
            return;
        }
        List<String> open = new ArrayList<>();
        interiors.looseToPlace().forEach(spec -> open.add(spec.name()));
        List<String> units = new ArrayList<>();
        interiors.stowages().forEach((unit, pieces) -> pieces.stream()
                .filter(piece -> piece.spec().within() != null && !unit.equals(piece.spec().within()))
                .forEach(piece -> {
                    open.add(piece.name() + " (in " + unit + ", not in " + piece.spec().within() + ")");
                    units.add(unit);
                }));
        if (open.isEmpty()) {
            rows.add(rows.draft(this).held("Every loose piece has its place."));
            return;
        }
        List<String> shown = open.size() > 8 ? new ArrayList<>(open.subList(0, 8)) : open;
        String more = open.size() > 8 ? " and " + (open.size() - 8) + " more" : "";
        rows.add(rows.draft(this)
                .units(units.stream().distinct().toList())
                .mend("Put them into a place with room, or take them out of the inventory.")
                .atMost(
                        open.size(),
                        0,
                        "pieces",
                        Wording.count(open.size(), "piece") + " to stow: "
                                + (more.isEmpty() ? Wording.list(shown) : String.join(", ", shown) + more) + "."));
    }
}
