package org.shelterwright.layouts.ledger.transport.securing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.transport.Gravity;
import org.shelterwright.layouts.transport.Block;
import org.shelterwright.layouts.transport.Lashing;
import org.shelterwright.layouts.transport.Mode;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.TransportRig;
import org.shelterwright.layouts.transport.scene.LegScene;

/** Balance of moments about the edge of the foot, by hand; and what is held as one. */
class TippingTest {
    private static final double TONNE = 1000 * Gravity.STANDARD;

    private static TransportRig deck() {
        return new TransportRig().on(TransportRig.plainCar(6_000, 2_400, 50_000.0));
    }

    /** 1 t, 1 m wide and 2 m high, in the middle of the deck: its centre 1 m high and 0.5 m from either edge. */
    private static TransportRig tall() {
        return deck().against(TransportRig.push(0, 0, 0.8, 1, 1)).crate("a", 2000, 700, 0, 2000, 1000, 2000, 1_000.0);
    }

    /** 1 t as wide as the deck, with an eye at the top of its rear face, at the right. */
    private static Piece eyed(double eyeN) {
        return TransportRig.crate("a", Size.ofMm(2000, 2400, 1000), 1_000.0, TransportRig.eye("eye", 0, 0, 1000, eyeN));
    }

    private static Bundle bundle(TransportRig rig) {
        LegScene leg = rig.leg();
        return Bundle.of(leg, leg.loads().get(0)).get(0);
    }

    private static Push toward(TransportRig rig, Face side) {
        return Push.of(rig.leg().rules(), 1.1).stream()
                .filter(push -> push.toward() == side)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void weightHoldsWithItsLeverAndThePushTipsWithItsHeight() {
        Tips.Balance balance = Tips.balance(bundle(tall()), toward(tall(), Face.LEFT));

        assertThat(balance.tipsNm()).isCloseTo(0.8 * TONNE * 1.0, within(1e-6));
        assertThat(balance.holdsNm()).isCloseTo(TONNE * 0.5, within(1e-6));
        assertThat(balance.use()).isCloseTo(1.6, within(1e-9));
        assertThat(tall().row("tipping").mend())
                .isEqualTo("Lash it from higher up on both sides, or set it on a wider base.");
    }

    /** The strap pulls down at both upper edges; that at the edge it would tip over has no lever, the other one 1 m. */
    @Test
    void aStrapOverItHoldsWithItsFarLeg() {
        TransportRig rig = tall().lash(Lashing.over("A1", "strap-50", List.of("a"), "right 4", "left 4"));
        Bundle bundle = bundle(rig);

        Tips.Balance left = Tips.balance(bundle, toward(rig, Face.LEFT));
        Tips.Balance right = Tips.balance(bundle, toward(rig, Face.RIGHT));

        double tension = Hold.tension(bundle.ropes().get(0));
        double sine = 2 / Math.hypot(0.7, 2);
        assertThat(tension).isPositive();
        assertThat(left.holdsNm()).isCloseTo(TONNE * 0.5 + tension * sine / 1.1 * 1.0, within(1e-6));
        assertThat(right.holdsNm()).isCloseTo(left.holdsNm(), within(1e-6));
    }

    /** A chain at the top of the rear face, 2 m ahead of its anchor: it holds with all it bears against tipping forward, not rearward. */
    @Test
    void aDirectLashingHoldsAgainstThePushThatItPullsAgainst() {
        TransportRig rig = deck().against(TransportRig.push(0.8, 0.5, 0, 1, 1))
                .piece(eyed(3_000), 2000, 0, 0)
                .lash(Lashing.direct("A1", "chain-8", "a", "eye", "right 1"));
        Bundle bundle = bundle(rig);

        Tips.Balance forward = Tips.balance(bundle, toward(rig, Face.FRONT));
        Tips.Balance rearward = Tips.balance(bundle, toward(rig, Face.REAR));

        double byChain = 3_000 * (2 / Math.sqrt(5) * 1.0 + 1 / Math.sqrt(5) * 2.0);
        assertThat(forward.tipsNm()).isCloseTo(0.8 * TONNE * 0.5, within(1e-6));
        assertThat(forward.holdsNm()).isCloseTo(TONNE * 1.0 + byChain, within(1e-6));
        assertThat(rearward.tipsNm()).isCloseTo(0.5 * TONNE * 0.5, within(1e-6));
        assertThat(rearward.holdsNm()).isCloseTo(TONNE * 1.0, within(1e-6));
    }

    /** Two pieces, 100 kg below and 300 kg on it a little ahead: centre at (100·2.5 + 300·2.75)/400 m, and three quarters up. */
    @Test
    void whatStandsOnAnotherPieceIsHeldWithIt() {
        TransportRig rig = deck().crate("a", 2000, 700, 0, 1000, 1000, 500, 100.0)
                .crate("b", 2250, 700, 500, 1000, 1000, 500, 300.0)
                .crate("c", 4000, 700, 0, 1000, 1000, 500, 50.0);
        LegScene leg = rig.leg();
        List<Bundle> bundles = Bundle.of(leg, leg.loads().get(0));

        assertThat(bundles).hasSize(2);
        Bundle both = bundles.get(0);
        assertThat(both.name()).isEqualTo("Crate a and Crate b");
        assertThat(both.kg()).isEqualTo(400);
        assertThat(both.centre()).isEqualTo(new Point(2_687_500, 1_200_000, 625_000));
        assertThat(both.box()).isEqualTo(Box.ofMm(2000, 700, 0, 3250, 1700, 1000));
        assertThat(both.foot()).as("of what stands on the floor").isEqualTo(Rect.ofMm(2000, 700, 3000, 1700));
        assertThat(both.toEdge(Face.FRONT)).isEqualTo(312_500);
        assertThat(both.toEdge(Face.REAR)).isEqualTo(687_500);
        assertThat(both.toEdge(Face.LEFT)).isEqualTo(500_000);
        assertThat(both.toEdge(Face.RIGHT)).isEqualTo(500_000);
        assertThat(both.ids()).containsExactly("a", "b", "car");
    }

    @Test
    void whatLiesUnderOneStrapIsHeldTogether() {
        TransportRig rig = deck().crate("a", 2000, 200, 0, 1000, 1000, 500, 100.0)
                .crate("b", 2000, 1200, 0, 1000, 1000, 500, 100.0)
                .crate("c", 3000, 200, 0, 1000, 1000, 500, 100.0)
                .crate("d", 3000, 1200, 0, 1000, 1000, 500, 100.0)
                .lash(Lashing.over("A1", "strap-50", List.of("a", "b"), "right 3", "left 3"))
                .lash(Lashing.over("A2", "strap-50", List.of("b", "c", "d"), "right 4", "left 4"));
        Bundle all = bundle(rig);

        assertThat(all.pieces()).hasSize(4);
        assertThat(all.ropes()).hasSize(2);
        assertThat(all.title()).isEqualTo("Crate a and 3 more");
        assertThat(all.foot()).isEqualTo(Rect.ofMm(2000, 200, 4000, 2200));
    }

    @Test
    void beamsHoldOnlyTheWayTheyStand() {
        TransportRig rig = tall().block(new Block("a", Block.Way.BEAMS, List.of(Face.LEFT, Face.FRONT), 3, 2_000.0));

        assertThat(Blocking.of(bundle(rig), Face.LEFT).holdsN()).isEqualTo(6_000);
        assertThat(Blocking.of(bundle(rig), Face.FRONT).holdsN()).isEqualTo(6_000);
        assertThat(Blocking.of(bundle(rig), Face.RIGHT).holdsN()).isZero();
        TransportRig unknown = tall().block(new Block("a", Block.Way.BEAMS, List.of(Face.LEFT), 3, null));
        assertThat(unknown.row("held").finding()).isEqualTo("The beams at Crate a state no strength. Give \"eachN\".");
    }

    /** Two blocks add up. */
    @Test
    void severalBlocksAddUp() {
        TransportRig rig = tall().block(new Block("a", Block.Way.BEAMS, List.of(Face.LEFT), 1, 2_000.0))
                .block(new Block("a", Block.Way.BEAMS, List.of(Face.LEFT), 2, 500.0));

        assertThat(Blocking.of(bundle(rig), Face.LEFT).holdsN()).isEqualTo(3_000);
    }

    @Test
    void chocksNeedAStripAndSpigotsAPlace() {
        TransportRig chocks = tall().block(new Block("a", Block.Way.CHOCKS, List.of(Face.LEFT), 2, null));
        TransportRig spigots = tall().block(new Block("a", Block.Way.SPIGOTS, List.of(Face.LEFT), 2, null));
        TransportRig wall = tall().block(new Block("a", Block.Way.STOP, List.of(Face.LEFT), 1, null));

        assertThat(chocks.row("held").finding())
                .isEqualTo(
                        "The wheels of Crate a do not stand on a strip of the Plain car on which chocks hold. Move it,"
                                + " or give \"chockRails\".");
        assertThat(spigots.row("held").finding())
                .isEqualTo(
                        "Crate a stands on no container place of the Plain car. Move it to one, or hold it otherwise.");
        assertThat(wall.row("held").finding())
                .isEqualTo("The Plain car has no end or wall at its left that a load may lean on. Block it otherwise.");
    }

    /** What leans on the headboard through others shares it by mass: 300 and 100 kg have three quarters and one quarter of it. */
    @Test
    void aHeadboardIsSharedByMassAmongWhatLeansOnIt() {
        TransportRig rig = leaning(20);
        LegScene leg = rig.leg();
        List<Bundle> bundles = Bundle.of(leg, leg.loads().get(0));

        double front = Blocking.of(bundles.get(0), Face.FRONT).holdsN();
        double behind = Blocking.of(bundles.get(1), Face.FRONT).holdsN();

        assertThat(front).isPositive();
        assertThat(behind).isCloseTo(front / 3, within(1e-6));
        assertThat(Blocking.of(Bundle.of(leaning(21).leg(), leaning(21).load()).get(1), Face.FRONT)
                        .missing())
                .as("21 mm behind it")
                .startsWith("Crate b is to lean on the front of Car but stands ");
    }

    private static TransportRig leaning(int gap) {
        return new TransportRig()
                .on("lorry-platform")
                .by(Mode.ROAD, "road-eu")
                .crate("a", 6200, 700, 0, 1000, 1000, 800, 300.0)
                .crate("b", 5200 - gap, 700, 0, 1000, 1000, 800, 100.0)
                .block(new Block("a", Block.Way.STOP, List.of(Face.FRONT), 1, null))
                .block(new Block("b", Block.Way.STOP, List.of(Face.FRONT), 1, null));
    }

    @Test
    void tiedownsFromAnEyeCountHalf() {
        TransportRig rig = new TransportRig()
                .on(TransportRig.plainCar(6_000, 2_400, 50_000.0))
                .by(Mode.ROAD, "tie-down-us-393")
                .piece(eyed(30_000), 2000, 0, 0)
                .lash(Lashing.direct("A1", "strap-35", "a", "eye", "right 1"));
        List<Row> rows = rig.rows("tiedowns-us");
        Row strength =
                rows.stream().filter(row -> row.unit().equals("kN")).findFirst().orElseThrow();
        Row count = rows.stream()
                .filter(row -> row.unit().equals("tiedowns"))
                .findFirst()
                .orElseThrow();

        // 49 CFR 393.106(d): 10 kN of working load limit from an anchor to the article count 5 kN; half of 1 t is 4.9
        // kN.
        assertThat(strength.capacity()).isEqualTo(5.0);
        assertThat(strength.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(strength.mend()).isNull();
        // 393.110: 2 m are 6.6 ft, which ask for two.
        assertThat(count.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(count.mend()).isEqualTo("Add tiedowns.");
        assertThat(count.finding()).isEqualTo("Crate a has 1 tiedown; its length and weight ask for 2.");
    }

    @Test
    void whereTheUsRulesDoNotApplyNothingIsCounted() {
        assertThat(tall().rows("tiedowns-us")).allMatch(Row::doesNotApply);
        assertThat(tall().rows("method")).allMatch(Row::doesNotApply);
        assertThat(tall().rows("walls")).allMatch(Row::doesNotApply);
        assertThat(tall().rows("lashings-cross")).allMatch(Row::doesNotApply);
    }

    /** Packed between walls that bear less than the push that friction leaves, (0.8 − 0.45) m g: broken. */
    @Test
    void wallsThatBearTooLittleAreBrokenAndUnknownOnesAreNamed() {
        TransportRig heavy = new TransportRig()
                .on("container-1cc")
                .by(Mode.ROAD, "road-eu")
                .crate("a", 0, 0, 0, 5800, 2300, 2000, 60_000.0)
                .packed();
        TransportRig open = deck().against(TransportRig.push(0.8, 0, 0, 1, 1))
                .crate("a", 0, 0, 0, 5800, 2300, 2000, 20_000.0)
                .packed();

        assertThat(heavy.row("walls").verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(heavy.row("walls").mend())
                .isEqualTo("Tie the load down as well, or put part of it into another car.");
        assertThat(heavy.row("walls").finding()).startsWith("The load of Car leans on the front with ");
        assertThat(open.row("walls").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(open.row("walls").finding())
                .isEqualTo("The Plain car states no strength of its front. Give \"stops\" in car plain.");
    }

    private static TransportRig onWagon(int x, int y, int dx, int dy, Block.Way way) {
        return new TransportRig()
                .crate("a", x, y, 0, dx, dy, 1000, 1_000.0)
                .block(new Block("a", way, List.of(Face.FRONT), 2, null));
    }

    /** The long flat wagon has a strip at each side, y 50 to 1120 and 1620 to 2690 mm, on which a chock holds 12 kN. */
    @Test
    void chocksHoldWhereBothSidesStandOnAStrip() {
        assertThat(Blocking.of(bundle(onWagon(2_000, 370, 2_000, 2_000, Block.Way.CHOCKS)), Face.FRONT)
                        .holdsN())
                .isEqualTo(24_000);
        assertThat(Blocking.of(bundle(onWagon(100, 50, 2_000, 2_640, Block.Way.CHOCKS)), Face.FRONT)
                        .holdsN())
                .as("at the very corner of the strips")
                .isEqualTo(24_000);
        for (TransportRig off : List.of(
                onWagon(99, 370, 2_000, 2_000, Block.Way.CHOCKS),
                onWagon(16_401, 370, 2_000, 2_000, Block.Way.CHOCKS),
                onWagon(2_000, 49, 2_000, 2_000, Block.Way.CHOCKS),
                onWagon(2_000, 370, 2_000, 2_321, Block.Way.CHOCKS),
                onWagon(2_000, 1_200, 2_000, 800, Block.Way.CHOCKS),
                onWagon(2_000, 370, 2_000, 1_000, Block.Way.CHOCKS))) {
            assertThat(Blocking.of(bundle(off), Face.FRONT).missing())
                    .startsWith("The wheels of Crate a do not stand on a strip of the Flat wagon, four axles, long");
        }
        assertThat(Blocking.of(bundle(onWagon(99, 370, 2_000, 2_000, Block.Way.CHOCKS)), Face.REAR)
                        .missing())
                .as("they do not act there")
                .isNull();
    }

    /** Of the four spigots of a place two bear at once: 2 · 75 kN; they do not lock, so they hold nothing down. */
    @Test
    void spigotsHoldWhatStandsJustOnTheirPlace() {
        Blocking seated = Blocking.of(bundle(onWagon(163, 151, 6_058, 2_438, Block.Way.SPIGOTS)), Face.FRONT);
        Blocking other = Blocking.of(bundle(onWagon(163, 151, 6_058, 2_438, Block.Way.SPIGOTS)), Face.LEFT);
        Blocking shifted = Blocking.of(bundle(onWagon(164, 151, 6_058, 2_438, Block.Way.SPIGOTS)), Face.FRONT);
        Blocking shorter = Blocking.of(bundle(onWagon(163, 151, 6_057, 2_438, Block.Way.SPIGOTS)), Face.FRONT);

        assertThat(seated.holdsN()).isEqualTo(150_000);
        assertThat(seated.upN()).isZero();
        assertThat(other.holdsN()).isZero();
        assertThat(shifted.missing()).startsWith("Crate a stands on no container place ");
        assertThat(shorter.missing()).startsWith("Crate a stands on no container place ");
    }

    /** The covered wagon bears 80 kN at its ends and 20 kN at its sides; 20 mm from them still leans. */
    @Test
    void whatLeansOnAWallIsHeldByIt() {
        assertThat(lean(0, 500, Face.REAR).holdsN()).isEqualTo(80_000);
        assertThat(lean(20, 500, Face.REAR).holdsN()).isEqualTo(80_000);
        assertThat(lean(21, 500, Face.REAR).missing())
                .isEqualTo("Crate a is to lean on the rear of Car but stands 21 mm from it. Move it there.");
        assertThat(lean(500, 20, Face.RIGHT).holdsN()).isEqualTo(20_000);
        assertThat(lean(500, 21, Face.RIGHT).missing()).contains(" stands 21 mm from it.");
        assertThat(lean(500, 1_560, Face.LEFT).holdsN()).isEqualTo(20_000);
        assertThat(lean(500, 1_559, Face.LEFT).missing()).contains(" stands 21 mm from it.");
        assertThat(lean(13_636, 500, Face.FRONT).holdsN()).isEqualTo(80_000);
    }

    private static Blocking lean(int x, int y, Face side) {
        TransportRig rig = covered()
                .crate("a", x, y, 0, 1_000, 1_000, 1_000, 100.0)
                .block(new Block("a", Block.Way.STOP, List.of(side), 1, null));
        return Blocking.of(bundle(rig), side);
    }

    private static TransportRig covered() {
        return new TransportRig().on("covered-wagon-2-axle");
    }

    /** A piece leans on one before it if they face each other in height and across, on every side of the car. */
    @Test
    void piecesLeanOnEachOtherWhereTheyFaceEachOther() {
        assertThat(chain(Face.REAR, 0, 500, 1_000, 500)).isCloseTo(20_000, within(1e-6));
        assertThat(chain(Face.RIGHT, 500, 0, 500, 1_000)).isCloseTo(5_000, within(1e-6));
        assertThat(chain(Face.LEFT, 500, 1_580, 500, 580)).isCloseTo(5_000, within(1e-6));
        assertThat(chain(Face.REAR, 0, 500, 1_000, 1_499)).as("by a millimetre").isCloseTo(20_000, within(1e-6));
        assertThat(chain(Face.REAR, 0, 500, 1_000, 1_500)).as("past it").isNaN();
        assertThat(chain(Face.RIGHT, 500, 0, 1_500, 1_000)).as("past it").isNaN();
        assertThat(chain(Face.REAR, 0, 500, 1_021, 500)).as("too far behind").isNaN();
    }

    /** What the second crate of 100 kg gets of a wall that 300 kg lean on before it; NaN if it does not lean. */
    private static double chain(Face side, int x, int y, int x2, int y2) {
        TransportRig rig = covered()
                .crate("a", x, y, 0, 1_000, 1_000, 1_000, 300.0)
                .crate("b", x2, y2, 0, 1_000, 1_000, 1_000, 100.0)
                .block(new Block("b", Block.Way.STOP, List.of(side), 1, null));
        LegScene leg = rig.leg();
        Blocking blocking = Blocking.of(Bundle.of(leg, leg.loads().get(0)).get(1), side);
        return blocking.missing() == null ? blocking.holdsN() : Double.NaN;
    }
}
