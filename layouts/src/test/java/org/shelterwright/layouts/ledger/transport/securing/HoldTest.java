package org.shelterwright.layouts.ledger.transport.securing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.catalog.transit.Underside;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.transport.Gravity;
import org.shelterwright.layouts.rules.LoadCase;
import org.shelterwright.layouts.transport.Block;
import org.shelterwright.layouts.transport.Crate;
import org.shelterwright.layouts.transport.Lashing;
import org.shelterwright.layouts.transport.Mode;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.TransportRig;
import org.shelterwright.layouts.transport.scene.LegScene;

/** Sliding after EN 12195-1:2010. */
class HoldTest {
    private static final Size SIZE = Size.ofMm(2000, 2400, 1000);

    /** Ten tonnes as wide as the deck, so that straps stand upright at its sides. */
    private static TransportRig tenTonnes() {
        return new TransportRig()
                .on(TransportRig.plainCar(6_000, 2_400, 20_000.0))
                .piece(TransportRig.crate("a", SIZE, 10_000.0), 2000, 0, 0);
    }

    private static Hold hold(TransportRig rig, double friction, Face toward) {
        LegScene leg = rig.leg();
        Bundle bundle = Bundle.of(leg, leg.loads().get(0)).get(0);
        Push push = Push.of(leg.rules(), 1.1).stream()
                .filter(one -> one.toward() == toward)
                .findFirst()
                .orElseThrow();
        return Hold.of(bundle, push, friction, 0.75);
    }

    /** Ice under it: neither its weight nor a strap over it holds anything, and that is said, not divided by. */
    @Test
    void withoutFrictionATieDownHoldsNothing() {
        TransportRig rig = tenTonnes()
                .against(TransportRig.push(0, 0, 0.5, 1.25, 1.1))
                .lash(Lashing.over("A1", "strap-50", List.of("a"), "right 4", "left 4"));

        Hold hold = hold(rig, 0, Face.LEFT);

        assertThat(hold.holdsN()).isZero();
        assertThat(hold.needN()).isPositive();
        assertThat(hold.use()).isGreaterThan(1).isNotNaN();
        assertThat(Held.parts(hold)).isEqualTo("nothing holds it");
    }

    /**
     * Number of upright straps with 4 kN tension for 10 t: computed from {@code n = (c − µ) m g f_s / (2 µ F_T)}; formula and f_s as
     * quoted from EN 12195-1:2010. The values were computed with g = 9.81.
     */
    @ParameterizedTest
    @CsvSource({"0.45,0.5,LEFT,1.499", "0.45,0.8,FRONT,11.92", "0.30,0.5,LEFT,8.99"})
    void strapsForTenTonnes(double friction, double g, Face toward, double published) {
        boolean forward = toward == Face.FRONT;
        TransportRig rig = tenTonnes()
                .against(TransportRig.push(forward ? g : 0, 0, forward ? 0 : g, 1.25, 1.1))
                .lash(Lashing.over("A1", "strap-50", List.of("a"), "right 4", "left 4"));

        Hold hold = hold(rig, friction, toward);

        double straps = (hold.needN() - hold.frictionN()) / hold.tieDownN() * 9.81 / Gravity.STANDARD;
        assertThat(straps).isCloseTo(published, within(0.005 * published));
        assertThat(hold.blockN()).isZero();
        assertThat(hold.lashingSum()).isZero();
    }

    /** Blocking force {@code F_B = (c − µ c_z) m g} (EN 12195-1:2010, from memory). */
    @Test
    void beamsOfExactlyTheBlockingForceHold() {
        double force = (0.8 - 0.45) * 10_000 * Gravity.STANDARD;
        TransportRig just = tenTonnes()
                .against(TransportRig.push(0.8, 0, 0, 1, 1))
                .block(new Block("a", Block.Way.BEAMS, List.of(Face.FRONT), 2, force / 2 + 0.01));
        TransportRig less = tenTonnes()
                .against(TransportRig.push(0.8, 0, 0, 1, 1))
                .block(new Block("a", Block.Way.BEAMS, List.of(Face.FRONT), 2, force / 2 - 1));

        assertThat(just.row("held").verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(less.row("held").verdict()).isEqualTo(Verdict.BROKEN);
    }

    /** Against a push up, friction holds nothing and two upright legs of a strap with 4 kN hold 8 kN (by hand). */
    @Test
    void strapsHoldDownWithBothLegs() {
        LoadCase up = new LoadCase(
                "up", "up", 0, 0, 0, 0.5, 0, 1, 1, 1, 1.1, LoadCase.Basis.PROOF, Source.stated("test", null));
        TransportRig rig =
                tenTonnes().against(up).lash(Lashing.over("A1", "strap-50", List.of("a"), "right 4", "left 4"));

        Hold hold = hold(rig, 0.45, Face.TOP);

        assertThat(hold.needN()).isCloseTo(0.5 * 10_000 * Gravity.STANDARD, within(1e-6));
        assertThat(hold.frictionN()).isZero();
        assertThat(hold.tieDownN()).isCloseTo(2 * Hold.tension(strap(rig)), within(1e-6));
        assertThat(hold.holdsN()).isEqualTo(hold.tieDownN());
        assertThat(hold.use()).isCloseTo(hold.needN() / hold.tieDownN(), within(1e-12));
        assertThat(rig.row("held").mend()).startsWith("Block it down or add lashings ");
        assertThat(rig.rows("tipping")).allMatch(Row::doesNotApply);
    }

    private static Rope strap(TransportRig rig) {
        LegScene leg = rig.leg();
        return Rope.of(leg, leg.loads().get(0)).get(0);
    }

    /** The tension of a tie-down counts up to half its capacity, and up to what its anchors bear (EN 12195-1:2010, quoted). */
    @Test
    void theTensionOfAStrapIsBoundByItsAnchors() {
        TransportRig weak = new TransportRig()
                .on(TransportRig.plainCar(6_000, 2_400, 1_500.0))
                .piece(TransportRig.crate("a", SIZE, 1_000.0), 2000, 0, 0)
                .lash(Lashing.over("A1", "strap-35", List.of("a"), "right 4", "left 4"));
        TransportRig chain = tenTonnes().lash(Lashing.over("A1", "chain-8", List.of("a"), "right 4", "left 4"));

        assertThat(Hold.tension(strap(weak))).isEqualTo(1_500);
        assertThat(Hold.tension(
                        strap(tenTonnes().lash(Lashing.over("A1", "strap-35", List.of("a"), "right 4", "left 4")))))
                .as("2 kN for a strap of 35 mm (EN 12195-2, from memory)")
                .isEqualTo(2_000);
        assertThat(Hold.tension(strap(chain)))
                .isLessThanOrEqualTo(0.5 * strap(chain).kind().capacityN());
    }

    @Test
    void everythingThatHoldsAddsUp() {
        Push push = new Push(TransportRig.push(1, 0, 0, 1, 1), Face.FRONT, 1, 1, 1);
        Hold hold = new Hold(push, 1_000, 100, 200, 300, 0.5, 600, null);

        assertThat(hold.holdsN()).isEqualTo(900);
        assertThat(hold.lashingN()).as("(1000 - 600) / 0.5").isEqualTo(800);
        assertThat(hold.use()).isCloseTo(1000 / 900.0, within(1e-12));
        assertThat(Held.parts(hold))
                .isEqualTo("friction 0.1 kN, tie-downs 0.2 kN, blocks 0.3 kN, direct lashings 0.3 kN hold");
        assertThat(new Hold(push, 600, 100, 200, 300, 0.5, 600, null).lashingN())
                .isZero();
        assertThat(new Hold(push, 0, 0, 0, 0, 0, 0, null).use()).isZero();
        assertThat(new Hold(push, 1, 0, 0, 0, 0, 0, null).use()).isEqualTo(Double.MAX_VALUE);
    }

    /** What is proposed is judged as the limits do: the worse of sliding and tipping. */
    @Test
    void aProposalIsJudgedBySlidingAndTipping() {
        TransportRig slides = tenTonnes().against(TransportRig.push(0.8, 0, 0, 1, 1));
        TransportRig tips = new TransportRig()
                .on(TransportRig.plainCar(6_000, 2_400, 1.0))
                .against(TransportRig.push(0, 0, 0.5, 1, 1))
                .crate("a", 2000, 700, 0, 2000, 500, 2000, 1_000.0);
        TransportRig unknown = new TransportRig().crate("a", 1000, 500, 0, 1000, 1000, 1000, null);

        assertThat(Proposal.use(slides.leg(), slides.load(), "a")).isCloseTo(0.8 / 0.45, within(1e-9));
        assertThat(Proposal.use(tips.leg(), tips.load(), "a")).isCloseTo(0.5 * 1.0 / 0.25, within(1e-9));
        assertThat(Proposal.use(slides.leg(), slides.load(), "b")).isInfinite();
        assertThat(Proposal.use(unknown.leg(), unknown.load(), "a")).isInfinite();
    }

    /** Lashing practice: direct lashings at 15 to 60 degrees, tie-downs at 35 at least; a chain spans 600 to 3500 mm. */
    @Test
    void aLashingIsProposedOnlyIfItFits() {
        assertThat(fits(Lashing.direct("B", "chain-8", "a", "rear right", "right 2"), 40_000.0))
                .isTrue();
        assertThat(fits(Lashing.direct("B", "chain-8", "a", "rear right", "right 3"), 40_000.0))
                .as("68 degrees")
                .isFalse();
        assertThat(fits(Lashing.direct("B", "chain-8", "a", "rear right", "right 2"), null))
                .as("an eye without a rating")
                .isFalse();
        assertThat(fits(Lashing.direct("B", "chain-8", "a", "rear right", "right 6"), 40_000.0))
                .as("through its own crate")
                .isFalse();
        assertThat(fits(Lashing.direct("B", "chain-8", "a", "no eye", "right 2"), 40_000.0))
                .isFalse();
        assertThat(fits(Lashing.over("B", "strap-50", List.of("a"), "right 4", "left 4"), 40_000.0))
                .isTrue();
        assertThat(fits(Lashing.direct("B", "chain-8", "a", "rear right", "left 2"), 40_000.0))
                .as("across the other one")
                .isFalse();
    }

    /** Four tonnes with an eye to each side at the top of the rear face. */
    private static Piece eyed(@Nullable Double eyeN) {
        return TransportRig.crate(
                "a",
                SIZE,
                4_000.0,
                TransportRig.eye("rear right", 0, 400, 1000, eyeN),
                TransportRig.eye("rear left", 0, 2000, 1000, eyeN));
    }

    private static boolean fits(Lashing lashing, @Nullable Double eyeN) {
        TransportRig rig = new TransportRig()
                .on(TransportRig.plainCar(6_000, 2_400, 50_000.0))
                .piece(eyed(eyeN), 2000, 0, 0)
                .lash(Lashing.direct("A", "chain-8", "a", "rear left", "left 1"));
        return Proposal.fits(rig.leg(), rig.load(), lashing);
    }

    private static TransportRig withEyes(double eyeN) {
        return new TransportRig()
                .on(TransportRig.plainCar(6_000, 2_400, 50_000.0))
                .against(TransportRig.push(0.8, 0, 0, 1.25, 1.1))
                .piece(eyed(eyeN), 2000, 0, 0)
                .lash(Lashing.direct("A1", "chain-8", "a", "rear right", "right 1"))
                .lash(Lashing.direct("A2", "chain-8", "a", "rear left", "left 1"));
    }

    /**
     * Direct lashings: {@code F_R = m g (c − µ f c_z) / Σ (µ f sin α + cos α cos β)} with f = 0.75 (EN 12195-1:2010, from memory),
     * against the formula written out here.
     */
    @Test
    void directLashingsShareTheRest() {
        Hold hold = hold(withEyes(40_000), 0.45, Face.FRONT);

        double length = Math.sqrt(2.0 * 2.0 + 0.4 * 0.4 + 1.0);
        double each = 0.75 * 0.45 * (1 / length) + 2.0 / length;
        double expected = 4_000 * Gravity.STANDARD * (0.8 - 0.75 * 0.45) / (2 * each);
        assertThat(hold.lashingN()).isCloseTo(expected, within(1e-6));
        assertThat(hold.weakestN()).isEqualTo(40_000);
    }

    @Test
    void theWeakestOfLashingEyeAndAnchorCounts() {
        assertThat(hold(withEyes(12_000), 0.45, Face.FRONT).weakestN()).isEqualTo(12_000);
        Row eye = withEyes(5_000).row("eye-force");
        assertThat(eye.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(eye.finding()).isEqualTo("Lashing A1 carries 8.8 kN; its eye bears 5.0 kN.");
        assertThat(withEyes(40_000).row("lashing-force").verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void saysWhatHoldsAndWhatLacks() {
        Row row = tenTonnes().against(TransportRig.push(0.8, 0, 0, 1.25, 1.1)).row("held");

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding())
                .isEqualTo("Crate a pushes with 78.5 kN (push, 0.8 g forward); friction 44.1 kN hold.");
        assertThat(row.mend())
                .isEqualTo(
                        "Block it there or add lashings that pull against it for 34.3 kN more, or lay anti-slip mats.");
        assertThat(row.state()).isEqualTo("leg 1, rail, push, 0.8 g forward");
    }

    @Test
    void missingDataAreNotAssessed() {
        TransportRig noMass = new TransportRig().crate("a", 1000, 500, 0, 1000, 1000, 1000, null);
        assertThat(noMass.row("held").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(noMass.row("held").finding()).isEqualTo("Crate a has no mass. Give massKg of piece a.");

        TransportRig noRating = new TransportRig()
                .on(TransportRig.plainCar(6_000, 2_400, null))
                .against(TransportRig.push(0.8, 0, 0, 1.25, 1.1))
                .piece(eyed(40_000.0), 2000, 0, 0)
                .lash(Lashing.direct("A1", "chain-8", "a", "rear right", "right 1"));
        assertThat(noRating.row("held").finding())
                .isEqualTo("The anchor point \"right 1\" of lashing A1 states no rating. Give \"ratingN\" of its row.");

        Piece metal = Piece.ofCrate(
                "m",
                "Metal box",
                new Crate(SIZE, 100.0, null, Point.ORIGIN, Underside.ROUGH_METAL, null, null, false, List.of()));
        assertThat(new TransportRig().piece(metal, 0, 0, 0).row("held").finding())
                .isEqualTo(
                        "The friction of unpainted rough metal on sawn timber is not known. Give the pair in a table of"
                                + " friction.");
    }

    /** Unlashed it is stable if b/d > c/c_z (EN 12195-1, quoted): 0.5 m to the edge, 1 m high, 0.5 g is exactly the bound. */
    @Test
    void tipsWhereTheStandardSaysSo() {
        TransportRig narrow = new TransportRig()
                .on(TransportRig.plainCar(6_000, 2_400, 1.0))
                .against(TransportRig.push(0, 0, 0.5, 1, 1))
                .crate("a", 2000, 700, 0, 2000, 1000, 2000, 1_000.0);
        TransportRig narrower = new TransportRig()
                .on(TransportRig.plainCar(6_000, 2_400, 1.0))
                .against(TransportRig.push(0, 0, 0.5, 1, 1))
                .crate("a", 2000, 700, 0, 2000, 998, 2000, 1_000.0);

        assertThat(narrow.row("tipping").use()).isCloseTo(1, within(1e-9));
        assertThat(narrow.row("tipping").verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(narrower.row("tipping").verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(narrower.row("tipping").finding())
                .isEqualTo(
                        "Crate a, centre 1000 mm high and 499 mm from the edge it would tip over (push, 0.5 g to the left).");
    }

    /** Source: 49 CFR 393.110 (secondary). Feet, pounds, blocked forward, number. */
    @ParameterizedTest
    @CsvSource({
        "5,1100,false,1",
        "5,1101,false,2",
        "6,900,false,2",
        "10,5000,false,2",
        "10.1,5000,false,3",
        "20,5000,false,3",
        "21,5000,false,4",
        "4,5000,true,1",
        "10,5000,true,1",
        "11,5000,true,2",
        "30,5000,true,3"
    })
    void tiedownsByLengthAndWeight(double feet, double pounds, boolean blocked, int number) {
        assertThat(UsTiedowns.needed(feet * 0.3048, pounds * 0.45359237, blocked))
                .isEqualTo(number);
    }

    /** Computed from 393.106(d): 10 000 lb need 5 000 lb of working load limit; two straps over it of 3 333 lb count 6 666 lb. */
    @Test
    void workingLoadLimitsAddUpToHalfTheWeight() {
        TransportRig rig = new TransportRig()
                .on(TransportRig.plainCar(6_000, 2_400, 50_000.0))
                .by(Mode.ROAD, "tie-down-us-393")
                .piece(TransportRig.crate("a", SIZE, 10_000 * 0.45359237), 2000, 0, 0)
                .lash(Lashing.over("A1", "strap-35", List.of("a"), "right 3", "left 3"))
                .lash(Lashing.over("A2", "strap-35", List.of("a"), "right 4", "left 4"));

        List<Row> rows = rig.rows("tiedowns-us");
        Row limits =
                rows.stream().filter(row -> row.unit().equals("kN")).findFirst().orElseThrow();
        Row count = rows.stream()
                .filter(row -> row.unit().equals("tiedowns"))
                .findFirst()
                .orElseThrow();
        assertThat(limits.demand()).isCloseTo(5_000 * 0.45359237 * Gravity.STANDARD / 1000, within(1e-6));
        assertThat(limits.capacity()).isEqualTo(20);
        assertThat(limits.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(count.verdict()).isEqualTo(Verdict.MET);
    }

    /** 49 CFR 393.108(a) (from memory): the least of the tiedown and of the points that it goes to. */
    @Test
    void aTiedownCountsNoMoreThanItsAnchorPoints() {
        assertThat(limits(6_000.0).capacity()).as("two of 6 kN").isEqualTo(12);
        assertThat(limits(50_000.0).capacity()).as("two straps of 10 kN").isEqualTo(20);
        assertThat(limits(null).verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(limits(null).finding()).contains("states no rating. Give \"ratingN\" of its row.");
    }

    private static Row limits(@Nullable Double anchorN) {
        return new TransportRig()
                        .on(TransportRig.plainCar(6_000, 2_400, anchorN))
                        .by(Mode.ROAD, "tie-down-us-393")
                        .piece(TransportRig.crate("a", SIZE, 1_000.0), 2000, 0, 0)
                        .lash(Lashing.over("A1", "strap-35", List.of("a"), "right 3", "left 3"))
                        .lash(Lashing.over("A2", "strap-35", List.of("a"), "right 4", "left 4"))
                        .rows("tiedowns-us")
                        .stream()
                        .filter(row -> row.title().startsWith("Working load limits"))
                        .findFirst()
                        .orElseThrow();
    }

    @Test
    void crossedLashingsAndPointsPulledBothWaysAreTold() {
        TransportRig crossed = withEyes(40_000).lash(Lashing.direct("A3", "chain-8", "a", "rear right", "left 2"));
        assertThat(crossed.rows("lashings-cross").get(0).finding()).isEqualTo("Lashings A2 and A3 cross on Car.");
        assertThat(crossed.rows("one-direction").get(0).finding())
                .isEqualTo("The eye rear right of a on Car is pulled in opposite directions by lashings A1 and A3.");
    }

    @Test
    void lashingsOfTheWrongLengthOrThroughThingsAreTold() {
        TransportRig far = new TransportRig()
                .on(TransportRig.plainCar(9_000, 2_400, 50_000.0))
                .piece(eyed(40_000.0), 6000, 0, 0)
                .crate("b", 3000, 100, 0, 1000, 1000, 900, 100.0)
                .lash(Lashing.direct("A1", "chain-8", "a", "rear right", "right 1"));

        assertThat(far.rows("lashing-way"))
                .extracting(Row::finding)
                .containsExactlyInAnyOrder(
                        "Lashing A1 is 6096 mm long; the Chain 8 mm with turnbuckle spans 600 to 3500 mm.",
                        "Lashing A1 of Crate a runs through Crate b.");
        assertThat(far.rows("lashing-angle").get(0).verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(far.rows("lashing-angle").get(0).finding()).isEqualTo("Lashing A1 stands at 9° to the floor.");
    }

    @Test
    void wallsHoldWhatIsPackedBetweenThem() {
        TransportRig rig = new TransportRig()
                .on("container-1cc")
                .by(Mode.SEA, "sea-ctu")
                .crate("a", 0, 0, 0, 5800, 2300, 2000, 20_000.0)
                .packed();

        Row row = rig.row("walls");
        // Sea area C lengthways: (0.4 − 0.45 × 0.2) m g against an end wall of 0.4 P (ISO 1496-1, from memory).
        assertThat(row.demand()).isCloseTo(0.31 * 20 * Gravity.STANDARD, within(0.001));
        assertThat(row.capacity()).isCloseTo(0.4 * (30.48 - 2.3) * Gravity.STANDARD, within(0.001));
        assertThat(rig.rows("held")).allMatch(Row::doesNotApply);
    }

    @Test
    void crateLeansOnTheHeadboardOnlyWhereItTouches() {
        Block block = new Block("a", Block.Way.STOP, List.of(Face.FRONT), 1, null);
        TransportRig away = new TransportRig()
                .on("lorry-platform")
                .by(Mode.ROAD, "road-eu")
                .crate("a", 5000, 700, 0, 1000, 1000, 800, 500.0)
                .block(block);
        TransportRig there = new TransportRig()
                .on("lorry-platform")
                .by(Mode.ROAD, "road-eu")
                .crate("a", 6200, 700, 0, 1000, 1000, 800, 500.0)
                .block(block);

        assertThat(away.row("held").finding())
                .isEqualTo("Crate a is to lean on the front of Car but stands 1200 mm from it. Move it there.");
        assertThat(there.row("held").verdict()).isNotEqualTo(Verdict.NOT_ASSESSED);
    }
}
