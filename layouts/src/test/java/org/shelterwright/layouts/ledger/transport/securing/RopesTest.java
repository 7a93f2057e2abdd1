package org.shelterwright.layouts.ledger.transport.securing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.transport.Lashing;
import org.shelterwright.layouts.transport.Mode;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.TransportRig;
import org.shelterwright.layouts.transport.scene.LegScene;

/** Lashings as lines: a deck of 6 x 2.4 m with a pair of anchor points every metre at its edges. */
class RopesTest {
    private static TransportRig deck() {
        return new TransportRig().on(TransportRig.plainCar(6_000, 2_400, 50_000.0));
    }

    private static Rope rope(TransportRig rig) {
        LegScene leg = rig.leg();
        return Rope.of(leg, leg.loads().get(0)).get(0);
    }

    /** A strap over a load as wide as the deck goes up 1 m, across 2.4 m and down 1 m; both legs stand upright. */
    @Test
    void aStrapOverAWideLoadStandsUpright() {
        Rope rope = rope(deck().crate("a", 2000, 0, 0, 2000, 2400, 1000, 100.0)
                .lash(Lashing.over("A1", "strap-50", List.of("a"), "right 4", "left 4")));

        assertThat(rope.direct()).isFalse();
        assertThat(rope.length() / 1000).isCloseTo(4400, within(1e-9));
        assertThat(rope.angle()).isCloseTo(90, within(1e-9));
        assertThat(rope.top()).isEqualTo(Point.ofMm(3000, 0, 1000));
        assertThat(rope.top2()).isEqualTo(Point.ofMm(3000, 2400, 1000));
    }

    /** The legs to a load that stands off centre: 3-4-5 at the right (0.75 m out, 1 m up), and flatter at the left (1.15 m out). */
    @Test
    void theFlatterLegOfAStrapCounts() {
        Rope rope = rope(deck().crate("a", 2000, 750, 0, 2000, 500, 1000, 100.0)
                .lash(Lashing.over("A1", "strap-50", List.of("a"), "left 4", "right 4")));

        double left = Math.hypot(1.15, 1);
        assertThat(rope.length() / 1e6).isCloseTo(1.25 + 0.5 + left, within(1e-9));
        assertThat(rope.sine()).isCloseTo(1 / left, within(1e-9));
        assertThat(rope.angle()).isCloseTo(Math.toDegrees(Math.atan(1 / 1.15)), within(1e-9));
        assertThat(rope.top()).as("at the side of its first anchor").isEqualTo(Point.ofMm(3000, 1250, 1000));
    }

    @Test
    void aStrapGoesOverWhereItIsTold() {
        Rope rope = rope(deck().crate("a", 2000, 0, 0, 2000, 2400, 1000, 100.0)
                .lash(new Lashing("A1", "strap-50", List.of("a"), null, "right 3", "left 5", 2_500_000)));

        assertThat(rope.top().x()).isEqualTo(2_500_000);
        assertThat(rope(deck().crate("a", 2000, 0, 0, 2000, 2400, 1000, 100.0)
                                .lash(Lashing.over("A1", "strap-50", List.of("a"), "right 3", "left 5")))
                        .top()
                        .x())
                .as("half-way between its anchors")
                .isEqualTo(3_000_000);
    }

    private static Piece eyed(@Nullable Double eyeN) {
        return TransportRig.crate("a", Size.ofMm(2000, 2400, 1000), 1_000.0, TransportRig.eye("eye", 0, 0, 1000, eyeN));
    }

    /** From (2, 0, 1) to (0, 0, 0): √5 m long, 2/√5 of its pull to the rear, 1/√5 down, 26.57° to the floor. */
    @Test
    void aDirectLashingPullsTowardsItsAnchor() {
        Rope rope = rope(
                deck().piece(eyed(9_000.0), 2000, 0, 0).lash(Lashing.direct("A1", "chain-8", "a", "eye", "right 1")));

        assertThat(rope.direct()).isTrue();
        assertThat(rope.length() / 1e6).isCloseTo(Math.sqrt(5), within(1e-9));
        assertThat(rope.alongX()).isCloseTo(-2 / Math.sqrt(5), within(1e-9));
        assertThat(rope.alongY()).isZero();
        assertThat(rope.sine()).isCloseTo(1 / Math.sqrt(5), within(1e-9));
        assertThat(rope.angle()).isCloseTo(26.565, within(0.001));
        assertThat(rope.bearsN()).as("the eye is the weakest").isEqualTo(9_000.0);
    }

    @Test
    void theWeakestPartOfALashingCounts() {
        TransportRig weakAnchor = new TransportRig()
                .on(TransportRig.plainCar(6_000, 2_400, 7_000.0))
                .piece(eyed(9_000.0), 2000, 0, 0)
                .lash(Lashing.direct("A1", "chain-8", "a", "eye", "right 1"));
        Rope strong =
                rope(deck().piece(eyed(1e6), 2000, 0, 0).lash(Lashing.direct("A1", "strap-35", "a", "eye", "right 1")));

        assertThat(rope(weakAnchor).bearsN()).isEqualTo(7_000.0);
        assertThat(strong.bearsN()).isEqualTo(strong.kind().capacityN());
    }

    @Test
    void anEyeWithoutARatingIsNamed() {
        TransportRig rig = deck().against(TransportRig.push(0.8, 0, 0, 1.25, 1.1))
                .piece(eyed(null), 2000, 0, 0)
                .lash(Lashing.direct("A1", "chain-8", "a", "eye", "right 1"));

        assertThat(rope(rig).bearsN()).isNull();
        assertThat(rig.row("held").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(rig.row("held").finding())
                .isEqualTo("The eye \"eye\" of lashing A1 states no rating. Give \"ratingN\" of it.");
    }

    @Test
    void aLineMeetsTheInsideOfACuboidAndNotItsFace() {
        Box box = Box.ofMm(100, 100, 0, 200, 200, 100);

        assertThat(LashingFits.meets(Point.ofMm(0, 150, 50), Point.ofMm(300, 150, 50), 0, box))
                .isTrue();
        assertThat(LashingFits.meets(Point.ofMm(300, 150, 50), Point.ofMm(0, 150, 50), 0, box))
                .isTrue();
        assertThat(LashingFits.meets(Point.ofMm(0, 100, 50), Point.ofMm(300, 100, 50), 0, box))
                .as("along its face")
                .isFalse();
        assertThat(LashingFits.meets(Point.ofMm(0, 200, 50), Point.ofMm(300, 200, 50), 0, box))
                .as("along its other face")
                .isFalse();
        assertThat(LashingFits.meets(Point.ofMm(0, 250, 50), Point.ofMm(300, 250, 50), 0, box))
                .as("beside it")
                .isFalse();
        assertThat(LashingFits.meets(Point.ofMm(0, 150, 150), Point.ofMm(300, 150, 0), 0, box))
                .as("down into it")
                .isTrue();
        assertThat(LashingFits.meets(Point.ofMm(0, 150, 250), Point.ofMm(300, 150, 100), 0, box))
                .as("over it")
                .isFalse();
        assertThat(LashingFits.meets(Point.ofMm(150, 150, 50), Point.ofMm(450, 150, 50), 0.2, box))
                .as("it is free from a fifth of its length on")
                .isFalse();
        assertThat(LashingFits.meets(Point.ofMm(150, 150, 50), Point.ofMm(450, 150, 50), 0.1, box))
                .isTrue();
    }

    @Test
    void linesCrossWithinBothAndNotAtAnEnd() {
        Point a = Point.ofMm(0, 0, 0);
        Point b = Point.ofMm(1000, 1000, 0);

        assertThat(Crossing.cross(a, b, Point.ofMm(0, 1000, 500), Point.ofMm(1000, 0, 0)))
                .isTrue();
        assertThat(Crossing.cross(Point.ofMm(0, 1000, 500), Point.ofMm(1000, 0, 0), b, a))
                .isTrue();
        assertThat(Crossing.cross(a, b, b, Point.ofMm(1000, 0, 0)))
                .as("from its end")
                .isFalse();
        assertThat(Crossing.cross(a, b, Point.ofMm(0, 1000, 0), Point.ofMm(400, 600, 0)))
                .as("short of it")
                .isFalse();
        assertThat(Crossing.cross(a, b, Point.ofMm(0, 500, 0), Point.ofMm(1000, 1500, 0)))
                .as("beside it")
                .isFalse();
        assertThat(Crossing.cross(a, b, Point.ofMm(1100, 1200, 0), Point.ofMm(1200, 1100, 0)))
                .as("beyond it")
                .isFalse();
    }

    @Test
    void lashingsThatAreTooShortOrLongAreTold() {
        // given a chain that spans 600 to 3500 mm, and one of 500 mm, √(0.3² + 0.4²)
        Piece low = TransportRig.crate(
                "a", Size.ofMm(2000, 2400, 400), 1_000.0, TransportRig.eye("eye", 0, 0, 400, 9_000.0));
        Row row = deck().piece(low, 2300, 0, 0)
                .lash(Lashing.direct("A1", "chain-8", "a", "eye", "right 3"))
                .row("lashing-way");

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding())
                .isEqualTo("Lashing A1 is 500 mm long; the Chain 8 mm with turnbuckle spans 600 to 3500 mm.");
        assertThat(row.mend()).isEqualTo("Take an anchor point farther off, or a shorter kind.");
    }

    @Test
    void pushesActTowardsTheirSides() {
        LegScene leg = deck().against(TransportRig.push(0.8, 0.5, 0.6, 1.25, 1.05))
                .crate("a", 2000, 0, 0, 2000, 2400, 1000, 100.0)
                .leg();
        List<Push> pushes = Push.of(leg.rules(), 1.1);

        assertThat(pushes).extracting(Push::toward).containsExactly(Face.FRONT, Face.REAR, Face.LEFT, Face.RIGHT);
        assertThat(pushes).extracting(Push::g).containsExactly(0.8, 0.5, 0.6, 0.6);
        assertThat(pushes)
                .as("the greater of the factor of tie-downs and of the case")
                .extracting(Push::factor)
                .containsExactly(1.25, 1.1, 1.1, 1.1);
        assertThat(pushes)
                .extracting(Push::text)
                .containsExactly(
                        "push, 0.8 g forward",
                        "push, 0.5 g rearward",
                        "push, 0.6 g to the left",
                        "push, 0.6 g to the right");
        assertThat(pushes).extracting(push -> push.along(0.6, 0.8)).containsExactly(0.6, -0.6, 0.8, -0.8);
    }

    /** PS Magazine 679 asks that tensioners can be reached: beside an open deck from the ground, in a container beside the load. */
    @Test
    void tensionersAreReachedFromTheSideOrBesideTheLoad() {
        TransportRig open = deck().crate("a", 0, 0, 0, 6000, 2400, 1000, 100.0);
        TransportRig closed = new TransportRig()
                .on("container-1cc")
                .by(Mode.ROAD, "road-eu", "lashing")
                .crate("a", 0, 300, 0, 5800, 1900, 1000, 100.0);

        assertThat(TensionerReach.free(open.load(), Point.ofMm(1000, 0, 0), 400))
                .isEqualTo(400.0);
        assertThat(TensionerReach.free(open.load(), Point.ofMm(1000, 400, 0), 400))
                .isEqualTo(400.0);
        assertThat(TensionerReach.free(open.load(), Point.ofMm(1000, 401, 0), 400))
                .isZero();
        assertThat(TensionerReach.free(closed.load(), Point.ofMm(1000, 0, 0), 400))
                .isEqualTo(300.0);
        assertThat(TensionerReach.free(closed.load(), Point.ofMm(1000, 0, 0), 250))
                .isEqualTo(250.0);
    }
}
