package org.shelterwright.layouts.ledger.transport.securing;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/**
 * Where vehicles are carried, the method says whether their hand brakes are set and what their gears are. Rules contradict each other
 * here: set and wired (TM 55-2320-210-20-4), not set on cushioned cars and gear in neutral (TM 55-2350-224-14; both seen).
 */
final class MethodStated extends LegLimit {
    MethodStated() {
        super(
                "method",
                "Hand brake and gear",
                Source.seen(
                        "TM 55-2320-210-20-4 and TM 55-2350-224-14", "hand brake and gear by the method that is used"),
                "No vehicle is carried on this leg.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        for (PlacedLoad load : leg.loads()) {
            List<String> wheeled = load.pieces().stream()
                    .filter(piece -> piece.shape().wheeled())
                    .map(PlacedPiece::id)
                    .toList();
            if (wheeled.isEmpty()) {
                continue;
            }
            List<String> units = new ArrayList<>(wheeled);
            units.add(load.id());
            Load.HandBrake brake = load.load().handBrake();
            Load.Gear gear = load.load().gear();
            var draft = draft(leg, rows, "Hand brake and gear, " + load.name()).units(units);
            rows.add(
                    brake == null || gear == null
                            ? draft.notAssessed("The method of " + load.name()
                                    + " does not say whether hand brakes are set and what the gear is. Give \"handBrake\""
                                    + " and \"gear\" of the load by the rules of the carrier.")
                            : draft.held("On " + load.name() + " hand brakes are " + brake.word() + " and gears "
                                    + gear.word() + "."));
        }
    }
}
