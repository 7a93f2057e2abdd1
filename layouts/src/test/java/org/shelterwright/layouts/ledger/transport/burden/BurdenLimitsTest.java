package org.shelterwright.layouts.ledger.transport.burden;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.transport.Mode;
import org.shelterwright.layouts.transport.TransportRig;

class BurdenLimitsTest {
    /** A load in the middle of the long flat wagon: tare 24.5 t, load limit on C 55.5 t, 19.9 m over buffers. */
    private static TransportRig middle(double kg) {
        return new TransportRig().crate("a", 5_250, 370, 0, 8_000, 2_000, 1_000, kg);
    }

    @Test
    void theLoadLimitIsThatOfTheLine() {
        assertThat(middle(55_500).row("load").verdict()).isEqualTo(Verdict.CLOSE);
        Row over = middle(55_501).row("load");
        assertThat(over.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(over.finding())
                .isEqualTo(
                        "Car carries up to 55501 kg; the Flat wagon, four axles, long takes 55500 kg on line category C3.");
        assertThat(middle(40_000).along("route-varn", "A", 250.0).row("load").capacity())
                .isEqualTo(39_500);
        // A wagon without a figure for D runs there with that for C.
        assertThat(middle(40_000).along("route-varn", "D4", 250.0).row("load").capacity())
                .isEqualTo(55_500);
    }

    @Test
    void axlesAndMetresAreHeldAgainstTheLineCategory() {
        Row axle = middle(55_500).row("axle");
        // (24.5 + 55.5) t on four axles.
        assertThat(axle.demand()).isCloseTo(20_000, within(1e-6));
        assertThat(axle.capacity()).isEqualTo(20_000);
        Row metre = middle(55_500).row("metre-load");
        assertThat(metre.demand()).isCloseTo(80_000 / 19.9, within(0.01));
        assertThat(metre.capacity()).isEqualTo(7_200);
        assertThat(metre.finding()).endsWith("Axles and metres need category C2 at least.");
    }

    @Test
    void withoutALineCategoryNothingIsMet() {
        TransportRig rig = middle(10_000).along("route-varn", null, 250.0);

        assertThat(rig.row("load").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(rig.row("axle").finding())
                .isEqualTo("The line category of leg 1, rail is not known. Give \"lineCategory\" of leg leg.");
        assertThat(rig.row("metre-load").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
    }

    /** UIC Loading Guidelines 3.3 (from memory): bogies 3 : 1, single axles 2 : 1, the empty wagon counted. */
    @Test
    void endsBearAlikeEnough() {
        TransportRig rear = new TransportRig().crate("a", 320, 370, 0, 3_000, 2_000, 1_000, 24_500.0);
        Row row = rear.row("end-ratio");
        // All of it over bogie 1: (12 250 + 24 500) / 12 250 = 3.
        assertThat(row.demand()).isCloseTo(3, within(1e-9));
        assertThat(row.capacity()).isEqualTo(3);
        assertThat(new TransportRig()
                        .on("flat-wagon-2-axle")
                        .crate("a", 750, 370, 0, 3_000, 2_000, 1_000, 6_501.0)
                        .row("end-ratio")
                        .verdict())
                .isEqualTo(Verdict.BROKEN);
        assertThat(new TransportRig()
                        .on("flat-wagon-2-axle")
                        .crate("a", 750, 370, 0, 3_000, 2_000, 1_000, 6_501.0)
                        .row("end-ratio")
                        .mend())
                .isEqualTo("Move the load forward, off rear axle.");
    }

    /** UIC Loading Guidelines 3.3 (from memory): wheels 1.25 : 1; a centre 83.3 mm off on 1.5 m reaches it. */
    @Test
    void sidesBearAlikeEnough() {
        // Gross centre off by 84 mm: load of 24.5 t, like the tare, off by 168 mm.
        TransportRig off = new TransportRig().crate("a", 5_250, 538, 0, 8_000, 2_000, 1_000, 24_500.0);
        assertThat(off.row("wheel-ratio").verdict()).isEqualTo(Verdict.BROKEN);
        TransportRig less = new TransportRig().crate("a", 5_250, 536, 0, 8_000, 2_000, 1_000, 24_500.0);
        assertThat(less.row("wheel-ratio").verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(off.row("wheel-ratio").mend()).isEqualTo("Move the load to the right.");
    }

    @Test
    void shortLoadsAreHeldAgainstConcentratedLoads() {
        TransportRig rig = new TransportRig().crate("a", 8_000, 370, 0, 2_000, 2_000, 1_000, 25_001.0);

        assertThat(rig.row("concentrated-load").verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(rig.row("concentrated-load").finding())
                .isEqualTo("Crate a puts 25001 kg on 2000 mm of Car, which bear 25000 kg.");
    }

    /** ISO 668:2013: gross 30 480 kg (seen); tare 2 300 kg leaves 28 180 kg. CTU Code 3.1: 60 % on half the length (seen). */
    @Test
    void containersAreHeldAgainstRatingHalfLengthAndCentre() {
        TransportRig rig = new TransportRig()
                .on("container-1cc")
                .by(Mode.ROAD, "road-eu", "stowage-ctu")
                .crate("a", 0, 165, 0, 2_933, 2_000, 1_000, 14_100.0)
                .crate("b", 2_934, 165, 0, 2_933, 2_000, 1_000, 14_081.0);

        assertThat(rig.row("load").capacity()).isEqualTo(28_180);
        assertThat(rig.row("load").verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(rig.row("half-length").demand()).isCloseTo(0.5003, within(0.001));
        assertThat(rig.rows("load-centre")).hasSize(2).allMatch(row -> row.verdict() == Verdict.MET);

        TransportRig front = new TransportRig()
                .on("container-1cc")
                .by(Mode.ROAD, "road-eu", "stowage-ctu")
                .crate("a", 3_900, 165, 0, 1_900, 2_000, 1_000, 20_000.0);
        assertThat(front.row("half-length").verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(front.rows("load-centre").stream()
                        .filter(row -> row.verdict() == Verdict.BROKEN)
                        .findFirst()
                        .orElseThrow()
                        .finding())
                .isEqualTo("The centre of the load of Car lies 1917 mm before the middle.");
    }

    @Test
    void aMissingMassMakesAllSumsNotAssessed() {
        TransportRig rig = new TransportRig().crate("a", 0, 370, 0, 2_000, 2_000, 1_000, null);

        for (String limit :
                new String[] {"load", "axle", "end-ratio", "wheel-ratio", "metre-load", "concentrated-load"}) {
            assertThat(rig.row(limit).verdict()).as(limit).isEqualTo(Verdict.NOT_ASSESSED);
            assertThat(rig.row(limit).finding()).as(limit).isEqualTo("Crate a has no mass. Give massKg of piece a.");
        }
    }

    /** CTU Code, annex 7, 3.1 (seen): 12 t of 20 t in one half of the length are 60 %, and a little more is too much. */
    @Test
    void sixtyPercentOnHalfTheLengthIsCloseAndMoreIsBroken() {
        assertThat(halves(12_000, 8_000).row("half-length").demand()).isCloseTo(0.6, within(1e-12));
        assertThat(halves(12_000, 8_000).row("half-length").verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(halves(12_000, 8_000).row("half-length").mend()).isNull();
        Row more = halves(8_000, 12_100).row("half-length");
        assertThat(more.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(more.finding()).isEqualTo("The heaviest half of Car bears 60.2 % of the load.");
        assertThat(more.mend()).isEqualTo("Spread the load along the container, or set it on bedding beams.");
    }

    /** A light load strains no floor: from half of the payload of 28 180 kg on it is asked (common practice). */
    @Test
    void halvesOfALightLoadAreNotAsked() {
        assertThat(halves(14_089, 0.5).row("half-length").doesNotApply()).isTrue();
        assertThat(halves(14_089, 1.5).row("half-length").doesNotApply()).isFalse();
    }

    private static TransportRig halves(double rearKg, double frontKg) {
        return new TransportRig()
                .on("container-1cc")
                .by(Mode.ROAD, "road-eu", "stowage-ctu")
                .crate("a", 0, 165, 0, 2_900, 2_000, 1_000, rearKg)
                .crate("b", 2_967, 165, 0, 2_900, 2_000, 1_000, frontKg);
    }

    @Test
    void theCentreOfALoadIsToldFromTheMiddle() {
        assertThat(centre(0, 165, "along").finding()).endsWith(" mm behind the middle.");
        assertThat(centre(4_800, 165, "along").finding()).endsWith(" mm before the middle.");
        assertThat(centre(2_400, 0, "across").finding()).endsWith(" mm right of the middle.");
        assertThat(centre(2_400, 1_300, "across").finding()).endsWith(" mm left of the middle.");
        assertThat(centre(0, 165, "along").verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(centre(0, 165, "along").mend()).isEqualTo("Move heavy things to the other side of the middle.");
    }

    private static Row centre(int x, int y, String way) {
        return new TransportRig()
                        .on("container-1cc")
                        .by(Mode.ROAD, "road-eu", "stowage-ctu")
                        .crate("a", x, y, 0, 1_000, 1_000, 1_000, 2_000.0)
                        .rows("load-centre")
                        .stream()
                        .filter(row -> row.title().startsWith("Centre " + way))
                        .findFirst()
                        .orElseThrow();
    }

    /** UIC Loading Guidelines 3.3 (from memory): three times as much on one bogie as on the other, exactly and a little more. */
    @Test
    void bogiesAreComparedFromTheHeavierEnd() {
        Row exact = new TransportRig()
                .crate("a", 320, 370, 0, 3_000, 2_000, 1_000, 24_500.0)
                .row("end-ratio");
        Row rear = new TransportRig()
                .crate("a", 320, 370, 0, 3_000, 2_000, 1_000, 24_600.0)
                .row("end-ratio");
        Row front = new TransportRig()
                .crate("a", 15_400, 370, 0, 3_000, 2_000, 1_000, 26_000.0)
                .row("end-ratio");

        assertThat(exact.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(exact.mend()).isNull();
        assertThat(rear.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(rear.mend()).startsWith("Move the load forward, off ");
        assertThat(front.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(front.mend()).startsWith("Move the load rearward, off ");
    }

    /** EN 15528 (seen): C2 takes 20 t on an axle and 6.4 t on a metre, C4 8 t. */
    @Test
    void theLineCategoryBoundsAxlesAndMetres() {
        Row exact = middle(55_500).row("axle");
        Row over = middle(55_504).row("axle");

        assertThat(exact.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(exact.mend()).isNull();
        assertThat(over.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(over.mend()).startsWith("Move the load off ").endsWith(", or take a car with more axles.");
        assertThat(over.finding()).contains(" by line category C3.");
        assertThat(middle(10_000)
                        .along("route-varn", "A", 250.0)
                        .row("metre-load")
                        .capacity())
                .isEqualTo(5_000);
        Row heavy = middle(75_100).along("route-varn", "A", 250.0).row("metre-load");
        assertThat(heavy.verdict()).as("99.6 t on 19.9 m").isEqualTo(Verdict.BROKEN);
        assertThat(heavy.mend()).isEqualTo("Take a longer wagon or something off it.");
    }

    @Test
    void wheelsBearMoreOnTheSideOfTheLoad() {
        Row right = new TransportRig()
                .crate("a", 5_250, 202, 0, 8_000, 2_000, 1_000, 24_500.0)
                .row("wheel-ratio");

        assertThat(right.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(right.mend()).isEqualTo("Move the load to the left.");
        assertThat(middle(24_500).row("wheel-ratio").demand()).isCloseTo(1, within(1e-9));
        assertThat(middle(24_500).row("wheel-ratio").mend()).isNull();
    }

    @Test
    void whatStandsOnAPieceAddsToItsLoadOnTheFloor() {
        TransportRig exact = new TransportRig()
                .crate("a", 8_000, 370, 0, 2_000, 2_000, 1_000, 24_000.0)
                .crate("b", 8_000, 370, 1_000, 2_000, 2_000, 500, 1_000.0);
        TransportRig half = new TransportRig()
                .crate("a", 8_000, 370, 0, 2_000, 2_000, 1_000, 24_000.0)
                .crate("b", 9_000, 370, 1_000, 2_000, 2_000, 500, 1_000.0);

        assertThat(onFloor(exact).demand()).isEqualTo(25_000.0);
        assertThat(onFloor(exact).verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(onFloor(exact).mend()).isNull();
        assertThat(onFloor(half).demand()).as("what hangs over bears nothing").isEqualTo(25_000.0);
        assertThat(onFloor(new TransportRig().crate("a", 8_000, 370, 0, 2_000, 2_000, 1_000, 25_001.0))
                        .mend())
                .isEqualTo("Set it on bedding beams that spread it, or take a stronger car.");
    }

    private static Row onFloor(TransportRig rig) {
        return rig.rows("concentrated-load").stream()
                .filter(row -> row.units().contains("a"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aFloorOfWhichNothingIsKnownIsNotAssessed() {
        Row row = new TransportRig()
                .on(TransportRig.plainCar(6_000, 2_400, 1.0))
                .crate("a", 2_000, 200, 0, 2_000, 2_000, 1_000, 500.0)
                .row("concentrated-load");

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding())
                .isEqualTo("The floor of the Plain car states no load for a length of 2000 mm. Give \"concentrated\" or"
                        + " \"perMetreKg\" in car plain.");
    }
}
