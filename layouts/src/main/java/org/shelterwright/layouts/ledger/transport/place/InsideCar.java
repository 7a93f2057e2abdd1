package org.shelterwright.layouts.ledger.transport.place;

import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.transit.Deck;
import org.shelterwright.catalog.transit.Step;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.ledger.transport.CarChoice;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/**
 * Each piece stands on the deck with all of its foot, ends within the deck lengthways, and under a roof with all of itself within
 * walls, roof and narrowing section. On an open deck it may be wider than the deck; the outline bounds that. Source: the sheet of the
 * car.
 */
final class InsideCar extends LegLimit {
    InsideCar() {
        super(
                "inside-car",
                "Inside the car",
                Source.commonPractice("a load stands on the deck with all of its foot"),
                "Everything stands within its car.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        for (PlacedLoad load : leg.loads()) {
            for (PlacedPiece piece : load.pieces()) {
                over(load, piece, leg, rows);
            }
        }
    }

    private void over(PlacedLoad load, PlacedPiece piece, LegScene leg, Rows rows) {
        Box box = piece.box();
        Rect foot = piece.foot();
        Deck deck = load.car().deck();
        int along = Math.max(-box.x0(), box.x1() - deck.length());
        int across = Math.max(-foot.y0(), foot.y1() - deck.width());
        int up = -box.z0();
        Integer clear = deck.clearHeight();
        if (clear != null) {
            across = Math.max(across, Math.max(-box.y0(), box.y1() - deck.width()));
            up = Math.max(up, box.z1() - clear);
            across = Math.max(across, overSection(deck, box));
        }
        int worst = Math.max(along, Math.max(across, up));
        if (worst <= 0) {
            return;
        }
        String way = worst == along ? "lengthways" : worst == across ? "sideways" : "upwards";
        rows.add(draft(leg, rows)
                .units(List.of(piece.id(), load.id()))
                .place(box)
                .source(load.car().source())
                .mend(CarChoice.mend(leg, load).orElse("Move it by at least " + Wording.mm(worst) + "."))
                .atMost(
                        worst / 1000.0,
                        0,
                        "mm",
                        piece.name() + " reaches " + Wording.mm(worst) + " " + way + " out of the "
                                + load.car().name() + " of " + load.name() + "."));
    }

    private static int overSection(Deck deck, Box box) {
        if (deck.section().isEmpty()) {
            return 0;
        }
        int half = Step.leastHalfWidth(deck.section(), box.z0(), box.z1());
        int middle = deck.width() / 2;
        return half < 0 ? 0 : Math.max(middle - box.y0(), box.y1() - middle) - half;
    }
}
