package org.shelterwright.layouts.ledger.transport.place;

import java.util.Comparator;
import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Axis;
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
        Rule rule = leg.rules().rule(Figure.VEHICLE_GAP).orElse(null);
        if (rule == null) {
            return;
        }
        for (PlacedLoad load : leg.loads()) {
            List<PlacedPiece> vehicles = load.pieces().stream()
                    .filter(piece -> piece.shape().wheeled())
                    .sorted(Comparator.comparingInt(piece -> piece.box().x0()))
                    .toList();
            for (int i = 1; i < vehicles.size(); i++) {
                PlacedPiece rear = vehicles.get(i - 1);
                PlacedPiece front = vehicles.get(i);
                int gap = rear.box().gap(front.box(), Axis.X);
                rows.add(draft(leg, rows)
                        .units(List.of(rear.id(), front.id(), load.id()))
                        .source(rule.source())
                        .mend(
                                gap < rule.value() * 1000
                                        ? "Move one of them by "
                                                + Wording.mm((int) Math.round(rule.value() * 1000) - gap) + " or more."
                                        : null)
                        .atLeast(
                                rule.value(),
                                gap / 1000.0,
                                "mm",
                                "Between " + rear.name() + " and " + front.name() + " are " + Wording.mm(gap) + " on "
                                        + load.name() + "."));
            }
        }
    }
}
