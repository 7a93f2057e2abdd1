package org.shelterwright.app.desk.transport;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.geometry.Point3D;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.desk.hand.Catch;
import org.shelterwright.app.desk.hand.Ray;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/** Drags seen from straight above: the pointer is the place. */
class DeckDragTest {
    private final JourneySession session = JourneyPost.session();

    private DeckDrag take(String piece, double toleranceMm) {
        PlacedLoad load = session.load().orElseThrow();
        PlacedPiece placed = load.piece(piece).orElseThrow();
        return new DeckDrag(session, load, placed, top(placed), toleranceMm);
    }

    private static Point3D top(PlacedPiece piece) {
        Point top = new Point(
                piece.box().centre().x(), piece.box().centre().y(), piece.box().z1());
        return new Point3D(top.x() / 1e3, top.y() / 1e3, top.z() / 1e3);
    }

    private static Ray down(double xMm, double yMm) {
        return new Ray(new Point3D(xMm, yMm, 50_000), new Point3D(0, 0, -1));
    }

    private Box box(String piece) {
        return session.load().orElseThrow().piece(piece).orElseThrow().box();
    }

    @Test
    void whatIsHeldFollowsThePointerOnTheGridAndIsOneStep() {
        DeckDrag drag = take("crate-1", 0);
        drag.to(down(15_000, 1_370));
        drag.to(down(12_503, 1_300));
        drag.drop();

        assertThat(box("crate-1").x0()).isEqualTo(11_900_000);
        assertThat(box("crate-1").y0()).isEqualTo(800_000);
        assertThat(session.now().orElseThrow().history().undoNames()).containsExactly("Move crate-1");
    }

    @Test
    void itIsCaughtAgainstNeighboursAndInTheMiddleOfTheDeck() {
        DeckDrag drag = take("crate-2", 120);
        drag.to(down(15_200 + 600 + 90, 1_370 + 30));

        assertThat(box("crate-2").x0()).isEqualTo(box("crate-1").x1());
        assertThat(box("crate-2").y0() + box("crate-2").y1()).isEqualTo(2_740_000);
        assertThat(drag.catches())
                .extracting(Catch::words)
                .containsExactly("against Spares crate 1", "the middle of the deck");
        drag.freely(true);
        assertThat(box("crate-2").x0()).isEqualTo(15_290_000);
        assertThat(drag.catches()).isEmpty();
    }

    @Test
    void aCrateGoesOnTopOfTheCrateThatThePointerRestsOn() {
        DeckDrag drag = take("crate-2", 0);
        drag.to(down(14_600, 1_370));

        assertThat(box("crate-2").z0()).isEqualTo(box("crate-1").z1());
        drag.to(down(17_000, 1_370));
        assertThat(box("crate-2").z0()).isZero();
    }

    @Test
    void vehiclesStayOnTheFloorAndContainersAreCaughtOnTheirPlaces() {
        DeckDrag truck = take("river-post", 0);
        truck.to(down(14_600, 1_370));
        assertThat(box("river-post").z0()).isZero();
        truck.cancel();

        session.look(
                focus -> focus.onLoad("wagon-2", session.now().orElseThrow().scene()));
        int seat = session.load().orElseThrow().car().seats().stream()
                .filter(one ->
                        one.length() == box("water-lab").x1() - box("water-lab").x0())
                .findFirst()
                .orElseThrow()
                .x();
        DeckDrag lab = take("water-lab", 150);
        lab.to(down(seat / 1e3 + 100 + (box("water-lab").x1() - box("water-lab").x0()) / 2e3, 1_370));
        assertThat(box("water-lab").x0()).isEqualTo(seat);
        assertThat(lab.catches()).first().extracting(Catch::kind).isEqualTo(Catch.Kind.HOLE);
    }

    @Test
    void oneAxisIsHeldAndGivingUpPutsItBack() {
        Box before = box("crate-1");
        DeckDrag drag = take("crate-1", 0);
        drag.to(down(12_000, 900));
        drag.only(Axis.X);
        assertThat(box("crate-1").y0()).isEqualTo(before.y0());
        assertThat(box("crate-1").x0()).isNotEqualTo(before.x0());
        drag.cancel();

        assertThat(box("crate-1")).isEqualTo(before);
        assertThat(session.now().orElseThrow().history().canUndo()).isFalse();
    }

    /** The farther the body overhangs the bogie, the farther a curve throws it: the outline fouls while the truck is held. */
    @Test
    void aTruckDraggedOverTheEndFoulsTheOutlineWhileItIsHeld() {
        DeckDrag drag = take("river-post", 0);
        Point3D from = top(session.load().orElseThrow().piece("river-post").orElseThrow());
        drag.to(down(from.getX() - 3_000, from.getY()));

        Row row = session.legLedger().orElseThrow().of("transport.outline").stream()
                .filter(one -> one.units().contains("river-post"))
                .findFirst()
                .orElseThrow();
        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding()).contains("fouls Varn valley route, sheet 2");
        assertThat(row.mend()).isNotBlank();
        assertThat(row.place()).isNotNull();
        drag.cancel();
    }
}
