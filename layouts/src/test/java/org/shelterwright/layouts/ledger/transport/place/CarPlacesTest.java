package org.shelterwright.layouts.ledger.transport.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.catalog.transit.Underside;
import org.shelterwright.catalog.transit.WheelGroup;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.transport.CarBuilder;
import org.shelterwright.layouts.transport.Crate;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.TransportRig;

class CarPlacesTest {
    private static TransportRig onWagon(int x, int y, int dx, int dy, int dz) {
        return new TransportRig().crate("a", x, y, 0, dx, dy, dz, 1_000.0);
    }

    /** Route outline 1 575 mm to 3 600 mm; wagon 2 740 mm wide; margin 25 mm; over a pin almost nothing is thrown (1.6 mm). */
    @Test
    void clearsTheOutlineOverAPinByExactlyWhatIsLeft() {
        Row row = onWagon(1_820, 20, 1, 2_700, 1_000).row("outline");

        assertThat(row.sense()).isEqualTo(Row.Sense.AT_LEAST);
        assertThat(row.demand()).isEqualTo(25);
        assertThat(row.capacity()).isCloseTo(1_575 - 1_350 - 1.62, within(0.05));
        assertThat(row.verdict()).isEqualTo(Verdict.MET);
        assertThat(row.source().document()).isEqualTo("Invented for the samples");
    }

    @Test
    void foulsTheOutlineWhereACurveThrowsIt() {
        Row row = onWagon(9_000, -130, 500, 3_000, 1_000).row("outline");

        // 112 mm between the pins leave 1 575 − 1 500 − 112 = −37 mm.
        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.capacity()).isCloseTo(-37, within(0.5));
        assertThat(row.finding())
                .isEqualTo(
                        "Crate a at 9250 mm along Car fouls Varn valley route, sheet 2 on the left by 37 mm: at a height of"
                                + " 2230 mm its half width is 1500 mm, and in the curve of 250 m it is thrown 112 mm; there are 1575 mm.");
        assertThat(row.mend()).contains("outline is wider by 62 mm");
        assertThat(row.place()).isNotNull();
    }

    @Test
    void aboveTheOutlineThereIsNoRoom() {
        Row row = onWagon(1_000, 500, 1_000, 1_000, 3_471).row("outline");

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding())
                .isEqualTo("Crate a on Car reaches 4701 mm above the way; Varn valley route, sheet 2 ends at 4700 mm.");
    }

    @Test
    void withoutOutlineOrCurveItIsNotAssessed() {
        assertThat(onWagon(0, 0, 1, 1, 1)
                        .along(null, "C3", 250.0)
                        .row("outline")
                        .finding())
                .isEqualTo("The outline of leg 1, rail is not known. Give \"outline\" of leg leg.");
        assertThat(onWagon(0, 0, 1, 1, 1)
                        .along("route-varn", "C3", null)
                        .row("outline")
                        .finding())
                .isEqualTo("The least curve of leg 1, rail is not known. Give \"curveM\" of leg leg.");
        assertThat(onWagon(0, 0, 1, 1, 1)
                        .along("route-varn", "C3", null)
                        .row("outline")
                        .verdict())
                .isEqualTo(Verdict.NOT_ASSESSED);
    }

    @Test
    void aCarOneSizeTooSmallIsRefusedWithTheNextThatWouldDo() {
        TransportRig rig =
                new TransportRig().on("flat-wagon-4-axle-short").crate("a", 0, 500, 0, 12_601, 1_500, 900, 30_000.0);

        Row length = rig.row("deck-length");
        assertThat(length.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(length.demand()).isCloseTo(12.601, within(1e-9));
        assertThat(length.capacity()).isCloseTo(12.6, within(1e-9));
        assertThat(length.finding())
                .isEqualTo(
                        "The load of Car is 12601 mm long; the deck of the Flat wagon, four axles, short is 12600 mm long.");
        assertThat(length.mend()).isEqualTo("Take the flat wagon \"Flat wagon, six axles\" (flat-wagon-6-axle).");
        assertThat(rig.rows("inside-car").get(0).finding())
                .isEqualTo("Crate a reaches 1 mm lengthways out of the Flat wagon, four axles, short of Car.");
    }

    @Test
    void exactlyAsLongAsTheDeckIsEnough() {
        TransportRig rig =
                new TransportRig().on("flat-wagon-4-axle-short").crate("a", 0, 500, 0, 12_600, 1_500, 900, 30_000.0);

        assertThat(rig.row("deck-length").verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(rig.row("inside-car").verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void overlapIsToldAndTouchingIsNot() {
        TransportRig rig = new TransportRig()
                .crate("a", 0, 0, 0, 1000, 1000, 1000, 100.0)
                .crate("b", 1000, 0, 0, 1000, 1000, 1000, 100.0)
                .crate("c", 1962, 0, 0, 1000, 1000, 1000, 100.0);

        assertThat(rig.row("overlap").finding()).isEqualTo("Crate b and Crate c overlap by 38 mm on Car.");
        assertThat(rig.row("overlap").mend()).isEqualTo("Move one of them by at least 38 mm.");
    }

    @Test
    void whatHangsInTheAirOrIsTooHeavyOnTopIsTold() {
        TransportRig rig = new TransportRig()
                .piece(strong("a", 150.0, false), 0, 0, 0)
                .crate("b", 500, 0, 1000, 1000, 1000, 500, 200.0);

        assertThat(rig.row("support").finding()).isEqualTo("Crate b on Car rests with only 50 % of its underside.");
        assertThat(rig.row("support").verdict()).isEqualTo(Verdict.BROKEN);
        // What hangs in the air bears nothing: all 200 kg rest on a.
        assertThat(rig.row("stacking").demand()).isEqualTo(200);
        assertThat(rig.row("stacking").capacity()).isEqualTo(150);
        assertThat(rig.row("stacking").verdict()).isEqualTo(Verdict.BROKEN);
    }

    @Test
    void nothingStandsOnFragileAndUnknownStrengthIsNotAssessed() {
        TransportRig fragile = new TransportRig()
                .piece(strong("a", 150.0, true), 0, 0, 0)
                .crate("b", 0, 0, 1000, 1000, 1000, 500, 200.0);
        assertThat(fragile.row("stacking").finding()).isEqualTo("a on Car carries 200 kg and is fragile.");
        assertThat(fragile.row("stacking").verdict()).isEqualTo(Verdict.BROKEN);

        TransportRig unknown = new TransportRig()
                .crate("a", 0, 0, 0, 1000, 1000, 1000, 100.0)
                .crate("b", 0, 0, 1000, 1000, 1000, 500, 200.0);
        assertThat(unknown.row("stacking").finding())
                .isEqualTo("Crate a carries 200 kg but states no stacking strength. Give stackingKg of piece a.");
    }

    @Test
    void twoPiecesBelowSupportAPieceTogether() {
        TransportRig both = new TransportRig()
                .crate("a", 0, 0, 0, 400, 1000, 1000, 100.0)
                .crate("b", 400, 0, 0, 600, 1000, 1000, 100.0)
                .crate("c", 0, 0, 1000, 1000, 1000, 500, 100.0);
        TransportRig lower = new TransportRig()
                .crate("a", 0, 0, 0, 400, 1000, 1000, 100.0)
                .crate("b", 400, 0, 0, 600, 1000, 999, 100.0)
                .crate("c", 0, 0, 1000, 1000, 1000, 500, 100.0);

        assertThat(both.row("support").verdict()).isEqualTo(Verdict.MET);
        assertThat(lower.row("support").finding()).isEqualTo("Crate c on Car rests with only 40 % of its underside.");
    }

    /** 200 kg over 400 mm of one and 600 mm of the other: 80 and 120 kg (by hand). */
    @Test
    void aMassIsSharedByTheAreaThatItRestsOn() {
        List<Row> rows = new TransportRig()
                .crate("a", 0, 0, 0, 400, 1000, 1000, 100.0)
                .crate("b", 400, 0, 0, 600, 1000, 1000, 100.0)
                .crate("c", 0, 0, 1000, 1000, 1000, 500, 200.0)
                .rows("stacking");

        assertThat(rows)
                .extracting(Row::finding)
                .containsExactlyInAnyOrder(
                        "Crate a carries 80 kg but states no stacking strength. Give stackingKg of piece a.",
                        "Crate b carries 120 kg but states no stacking strength. Give stackingKg of piece b.");
    }

    /** From the top down: 60 kg rest on b, which with its 90 kg rests on a: 150 kg, as much as a bears (by hand). */
    @Test
    void massesAddUpFromTheTopDown() {
        assertThat(stacked(90).verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(stacked(90).mend()).isNull();
        assertThat(stacked(91).verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(stacked(91).demand()).isEqualTo(151.0);
        assertThat(stacked(91).mend()).isEqualTo("Put it on top, or take something off it.");
        assertThat(stacked(91).finding()).isEqualTo("a on Car carries 151 kg of 150 kg.");
    }

    private static Row stacked(double kg) {
        return new TransportRig()
                        .piece(strong("a", 150.0, false), 0, 0, 0)
                        .crate("b", 0, 0, 1000, 1000, 1000, 500, kg)
                        .crate("c", 0, 0, 1500, 1000, 1000, 500, 60.0)
                        .rows("stacking")
                        .stream()
                        .filter(row -> row.units().contains("a"))
                        .findFirst()
                        .orElseThrow();
    }

    @Test
    void everyPieceOfTheJourneyGoes() {
        Row row = onWagon(0, 0, 1, 1, 1).row("everything-goes");

        assertThat(row.verdict()).isEqualTo(Verdict.MET);
        assertThat(row.finding()).isEqualTo("All 1 piece of the journey go.");
        assertThat(onWagon(0, 0, 1, 1, 1).row("vehicle-gap").doesNotApply()).isTrue();
    }

    /** Throw in curves is the geometry of two bogies: of a car that states others it is not known. */
    @Test
    void theThrowOfACarWithoutTwoBogiesIsNotAssessed() {
        List<WheelGroup> wheels = CarBuilder.like("flat-wagon-4-axle").build().wheels();
        TransportRig rig = new TransportRig()
                .on(CarBuilder.like("flat-wagon-4-axle")
                        .wheels(wheels.subList(0, 1))
                        .build())
                .crate("a", 1_000, 500, 0, 1_000, 1_000, 1_000, 100.0);

        assertThat(rig.row("outline").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(rig.row("outline").finding())
                .isEqualTo(
                        "The throw of the Flat wagon, four axles, long in curves is told of two wheel groups; it states 1."
                                + " Give its two bogies or axles in \"wheels\" of car like-flat-wagon-4-axle.");
    }

    private static Piece strong(String id, Double stackingKg, boolean fragile) {
        return Piece.ofCrate(
                id,
                id,
                new Crate(
                        Size.ofMm(1000, 1000, 1000),
                        100.0,
                        null,
                        Point.ofMm(500, 500, 500),
                        Underside.SAWN_TIMBER,
                        null,
                        stackingKg,
                        fragile,
                        List.of()));
    }

    @Test
    void whatMayNotRideTogetherIsTold() {
        Piece a = new Piece(
                "a",
                "Acid",
                null,
                null,
                TransportRig.crate("a", Size.ofMm(500, 500, 500), 10.0).crate(),
                null,
                List.of("b"),
                List.of("c"),
                null);
        TransportRig rig = new TransportRig().piece(a, 0, 0, 0).crate("b", 600, 0, 0, 500, 500, 500, 10.0);

        assertThat(rig.rows("together-apart"))
                .extracting(Row::finding)
                .containsExactlyInAnyOrder(
                        "Acid may not ride with Crate b; both are on Car.",
                        "Acid must ride with c, which is not on Car.");
    }
}
