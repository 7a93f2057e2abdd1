package org.shelterwright.layouts.ledger.transport.place;

import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.transit.Doorway;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.ledger.transport.CarChoice;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/**
 * Each piece passes a doorway of its car, turned as it stands, with play beside and above. Source: TB 11-5400-200-14: a container
 * opening at least 1.5 in wider and 2 in higher than a shelter (seen); the play is a figure of the rules.
 */
final class DoorPasses extends LegLimit {
    DoorPasses() {
        super(
                "doorway",
                "Doorway",
                Source.seen("TB 11-5400-200-14", "opening at least 1.5 in wider and 2 in higher than what passes"),
                "No car of this leg has a doorway.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        double wide = leg.rules().valueOr(Figure.DOOR_PLAY_WIDE, 0);
        double high = leg.rules().valueOr(Figure.DOOR_PLAY_HIGH, 0);
        for (PlacedLoad load : leg.loads()) {
            if (!load.car().doorways().isEmpty()) {
                load.pieces().forEach(piece -> assess(leg, load, piece, wide, high, rows));
            }
        }
    }

    private record Way(Doorway door, double needMm, double haveMm, boolean height) {
        double left() {
            return haveMm - needMm;
        }
    }

    private void assess(LegScene leg, PlacedLoad load, PlacedPiece piece, double wide, double high, Rows rows) {
        Box box = piece.box();
        Way best = null;
        for (Doorway door : load.car().doorways()) {
            boolean end = door.wall().axis() == Axis.X;
            int width = end ? box.y1() - box.y0() : box.x1() - box.x0();
            Way w = new Way(door, width / 1000.0 + wide, door.width() / 1000.0, false);
            Way h = new Way(door, (box.z1() - box.z0()) / 1000.0 + high, door.height() / 1000.0, true);
            Way tight = w.left() < h.left() ? w : h;
            best = best == null || tight.left() > best.left() ? tight : best;
        }
        if (best == null) {
            return;
        }
        boolean passes = best.left() >= 0;
        String what = best.height() ? "high" : "wide";
        int own = (int) Math.round(1000 * (best.needMm() - (best.height() ? high : wide)));
        rows.add(draft(leg, rows, "Doorway, " + piece.name())
                .units(List.of(piece.id(), load.id()))
                .mend(passes ? null : CarChoice.mend(leg, load).orElse("Turn it, or take a car with a larger doorway."))
                .atMost(
                        best.needMm(),
                        best.haveMm(),
                        "mm",
                        piece.name() + " is " + Wording.mm(own) + " " + what + "; the "
                                + best.door().name() + " of the "
                                + load.car().name() + " is "
                                + Wording.mm(
                                        best.height()
                                                ? best.door().height()
                                                : best.door().width()) + " " + what
                                + "."));
    }
}
