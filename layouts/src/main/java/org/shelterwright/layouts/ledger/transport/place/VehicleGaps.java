package org.shelterwright.layouts.ledger.transport.place;

import java.util.Comparator;
import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/**
 * Vehicles on one car stand apart, so that nothing touches when the car is shaken and somebody can get at the lashings. Source: TEA
 * Pamphlet 55-19 and AAR open-top rules, section 6: at least 10 in between vehicles.
 */
final class VehicleGaps extends LegLimit {
    VehicleGaps() {
        super(
                "vehicle-gap",
                "Distance between vehicles",
                Source.seen("TEA Pamphlet 55-19 and AAR open-top loading rules, section 6", "at least 10 in (254 mm)"),
                "No two vehicles share a car.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        for (PlacedLoad load : leg.loads()) {
            List<PlacedPiece> vehicles = load.pieces().stream()
                    .filter(piece -> piece.shape().wheeled())
                    .sorted(Comparator.comparingInt(piece -> piece.box().x0()))
                    .toList();
            for (int i = 0; i < vehicles.size(); i++) {
                for (PlacedPiece front : vehicles.subList(i + 1, vehicles.size())) {
                    rows.add(row(leg, load, vehicles.get(i), front, rows));
                }
            }
        }
    }

    private Row row(LegScene leg, PlacedLoad load, PlacedPiece rear, PlacedPiece front, Rows rows) {
        RowDraft draft = draft(leg, rows).units(List.of(rear.id(), front.id(), load.id()));
        Rule rule = leg.rules().rule(Figure.VEHICLE_GAP).orElse(null);
        if (rule == null) {
            return unset(draft, Figure.VEHICLE_GAP);
        }
        int needed = (int) Math.round(rule.value() * Lengths.MM);
        int gap = Math.max(rear.box().gap(front.box(), Axis.X), rear.box().gap(front.box(), Axis.Y));
        String names = rear.name() + " and " + front.name();
        return draft.source(rule.source())
                .mend(gap < needed ? "Move one of them by " + Wording.mm(needed - gap) + " or more." : null)
                .atLeast(
                        rule.value(),
                        gap / (double) Lengths.MM,
                        "mm",
                        gap < 0
                                ? names + " overlap by " + Wording.mm(-gap) + " on " + load.name() + "."
                                : "Between " + names + " are " + Wording.mm(gap) + " on " + load.name() + ".");
    }
}
