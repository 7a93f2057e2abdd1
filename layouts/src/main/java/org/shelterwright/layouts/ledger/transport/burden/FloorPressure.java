package org.shelterwright.layouts.ledger.transport.burden;

import java.util.List;
import java.util.Map;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.transport.Gravity;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;
import org.shelterwright.layouts.transport.scene.Resting;

/**
 * What stands on a floor presses on it no more than it bears, with what stands on top: {@code m g / area of the underside}, spread
 * evenly. Asked where the floor states a pressure, and of holds of aircraft. Runners and feet press harder on what is below them:
 * those are for whoever shores the load. Source: the sheet of the car; floor loading limits of holds (common practice).
 */
final class FloorPressure extends LegLimit {
    FloorPressure() {
        super(
                "floor-pressure",
                "Pressure on the floor",
                Source.commonPractice("area load limit of the floor, as holds of aircraft state it"),
                "No car of this leg states what pressure its floor bears.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        for (PlacedLoad load : leg.loads()) {
            boolean stated = load.car().floor().pressureKPa() != null;
            if (!stated && load.car().kind() != TransitCar.Kind.HOLD) {
                continue;
            }
            Map<String, Double> onTop = Resting.massesKg(load);
            for (PlacedPiece piece : load.pieces()) {
                if (piece.box().z0() == 0 && !piece.shape().wheeled()) {
                    assess(leg, load, piece, onTop.getOrDefault(piece.id(), 0.0), rows);
                }
            }
        }
    }

    private void assess(LegScene leg, PlacedLoad load, PlacedPiece piece, double onTopKg, Rows rows) {
        RowDraft draft = draft(leg, rows, title() + ", " + piece.name())
                .units(List.of(piece.id(), load.id()))
                .place(piece.box())
                .source(load.car().source());
        Double bearsKPa = load.car().floor().pressureKPa();
        if (bearsKPa == null) {
            rows.add(draft.notAssessed("The floor of the " + load.car().name()
                    + " states no pressure. Give \"pressureKPa\" in the floor of car "
                    + load.car().id() + "."));
            return;
        }
        String unknown = load.unknown().orElse(null);
        if (unknown != null) {
            rows.add(draft.notAssessed(unknown));
            return;
        }
        Rect foot = piece.foot();
        double area = Lengths.metres(foot.x1() - foot.x0()) * Lengths.metres(foot.y1() - foot.y0());
        double kPa = (piece.shape().mostKg() + onTopKg) * Gravity.STANDARD / area / 1000;
        rows.add(draft.mend(kPa > bearsKPa ? "Set it on shoring that spreads it, or take a stronger car." : null)
                .atMost(
                        kPa,
                        bearsKPa,
                        "kPa",
                        piece.name() + " presses with " + Amounts.number(kPa, 2) + " kPa on the floor of " + load.name()
                                + ", which bears " + Amounts.number(bearsKPa, 2) + " kPa."));
    }
}
