package org.shelterwright.layouts.ledger.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.MovablePart;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;

/** Distances to what faces a served side, against the values of the published tables. */
class FacingLimitsTest {
    private static final TrialItem BOARD = TrialItem.of("board", 300, 800, 1900)
            .kind(ItemKind.POWER_UNIT)
            .zone(Purpose.SERVICE, Box.ofMm(300, 0, 0, 800, 800, 1900));
    private static final TrialItem RACK = TrialItem.of("rack", 800, 600, 1800);

    private static Trial board(double volts) {
        return Trial.in(TrialBody.of(4000, 2000, 2300))
                .rules("workplace-us")
                .limit(Figure.ELECTRIC_VOLTAGE, volts)
                .floor("board", BOARD, 0, 0);
    }

    private static Place before(String distance) {
        return Place.onFloor(Pose.at(new Point(300_000 + Lengths.parse(distance), 0, 0)));
    }

    private static Place facing(String distance) {
        return Place.onFloor(new Pose(new Point(300_000 + Lengths.parse(distance), 0, 0), QuarterTurn.R180));
    }

    private static Row first(Trial trial, Limit limit) {
        return trial.rows(limit).get(0);
    }

    /** 29 CFR 1910.303, Table S-1: 3 ft up to 150 V; 3.5 ft from 151 to 600 V to earthed parts. */
    @ParameterizedTest
    @CsvSource({
        "120, 3 ft, CLOSE, 914.4",
        "150, 914.399, BROKEN, 914.4",
        "151, 3 ft, BROKEN, 1066.8",
        "600, 42 in, CLOSE, 1066.8",
        "600, 1066.799, BROKEN, 1066.8"
    })
    void workingDepthGoesByTheVoltage(double volts, String distance, Verdict verdict, double neededMm) {
        Row row = first(board(volts).put("rack", RACK, before(distance)), new ElectricSpace());

        assertThat(row.verdict()).isEqualTo(verdict);
        assertThat(row.demand()).isEqualTo(neededMm);
        assertThat(row.source().text()).contains("29 CFR 1910.303, Table S-1");
    }

    /** 29 CFR 1910.303, Table S-1, condition C: 4 ft between live parts on both sides. */
    @ParameterizedTest
    @CsvSource({"4 ft, CLOSE", "1219.199, BROKEN"})
    void liveFacesLiveFartherApart(String distance, Verdict verdict) {
        List<Row> rows = board(400).put("other", BOARD, facing(distance)).rows(new ElectricSpace());

        assertThat(rows).hasSize(3);
        assertThat(rows.subList(0, 2)).allSatisfy(row -> {
            assertThat(row.demand()).isEqualTo(1219.2);
            assertThat(row.verdict()).isEqualTo(verdict);
        });
    }

    @Test
    void aBoardThatShowsItsBackCountsAsEarthed() {
        Row row = first(board(400).put("other", BOARD, before("1066.8")), new ElectricSpace());

        assertThat(row.demand()).isEqualTo(1066.8);
        assertThat(row.verdict()).isEqualTo(Verdict.CLOSE);
    }

    @Test
    void aBrokenDepthSaysWhatFacesAndWhatIsLacking() {
        Row row = first(board(230).put("rack", RACK, before("3 ft")), new ElectricSpace());

        assertThat(row.finding())
                .isEqualTo("Before Board 914.4 mm are free, up to Rack; 1066.8 mm are needed (151 to 600 V to earth,"
                        + " facing earthed parts).");
        assertThat(row.mend()).isEqualTo("Move Rack at least 152.4 mm away from Board.");
        assertThat(row.units()).containsExactly("board", "rack");
        assertThat(row.place()).isEqualTo(new Box(300_000, 0, 0, 1_214_400, 800_000, 1_981_200));
    }

    /** 29 CFR 1910.303(g)(1): 30 in or the width of the equipment, the space need not be centred. */
    @ParameterizedTest
    @CsvSource({"762, MET", "761, BROKEN"})
    void aNarrowBoardHas30InchesBeforeIt(int freeMm, Verdict verdict) {
        TrialItem narrow = TrialItem.of("narrow", 150, 400, 1900)
                .kind(ItemKind.POWER_UNIT)
                .zone(Purpose.SERVICE, Box.ofMm(150, 0, 0, 600, 400, 1900));

        Row row = Trial.in(TrialBody.of(4000, 2000, 2300))
                .rules("workplace-us")
                .floor("narrow", narrow, 0, 300)
                .floor("right", TrialItem.of("right", 800, 300, 1000), 150, 0)
                .floor("left", TrialItem.of("left", 800, 900, 1000), 150, 300 + freeMm)
                .rows(new ElectricSpace())
                .get(0);

        assertThat(row.verdict()).isEqualTo(verdict);
    }

    /** 29 CFR 1910.303(g)(1): what is above or below may stand out 6 in before the equipment. */
    @ParameterizedTest
    @CsvSource({"452.4, MET", "452.401, BROKEN"})
    void whatIsBelowMayStandOutSixInches(String depth, Verdict verdict) {
        TrialItem wall = TrialItem.of("wall", 300, 800, 600)
                .kind(ItemKind.POWER_UNIT)
                .on(Surface.WALL)
                .zone(Purpose.SERVICE, Box.ofMm(300, 0, 0, 800, 800, 600));
        Trial trial = Trial.in(TrialBody.of(4000, 2000, 2300))
                .rules("workplace-us")
                .put("wall", wall, Trial.at(Surface.WALL, 0, 0, 1000, QuarterTurn.R0));

        Row row = trial.put(
                        "box",
                        TrialItem.of("box", 1000, 800, 1000)
                                .solid(new Box(0, 0, 0, Lengths.parse(depth), 800_000, 500_000)),
                        Trial.onFloor(0, 0, QuarterTurn.R0))
                .rows(new ElectricSpace())
                .get(0);

        assertThat(row.verdict()).isEqualTo(verdict);
    }

    /** 29 CFR 1910.303, Table S-1, note: 30 in at a side where dead parts are worked at. */
    @ParameterizedTest
    @CsvSource({"762, CLOSE", "761, BROKEN"})
    void aSideThatIsWorkedAtWhenDeadHas30Inches(int freeMm, Verdict verdict) {
        TrialItem board = TrialItem.of("board", 300, 800, 1900)
                .kind(ItemKind.POWER_UNIT)
                .zone(Purpose.SERVICE, Box.ofMm(-500, 0, 0, 0, 800, 1900));

        Row row = Trial.in(TrialBody.of(4000, 2000, 2300))
                .rules("workplace-us")
                .floor("board", board, freeMm, 0)
                .rows(new ElectricSpace())
                .get(0);

        assertThat(row.verdict()).isEqualTo(verdict);
        assertThat(row.finding()).contains("up to the rear wall").contains("worked at when dead");
    }

    @Test
    void beyond600VoltsTheTableEnds() {
        Row row = first(board(601), new ElectricSpace());

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding()).isEqualTo("The table for working spaces ends at 600 V to earth; more is set.");
    }

    /** 29 CFR 1910.303(g)(1)(vi): 6 ft 6 in. */
    @ParameterizedTest
    @CsvSource({"1982, CLOSE", "1981, BROKEN"})
    void electricEquipmentHasHeadroom(int heightMm, Verdict verdict) {
        List<Row> rows = Trial.in(TrialBody.of(4000, 2000, heightMm))
                .rules("workplace-us")
                .floor("board", BOARD, 0, 0)
                .rows(new ElectricSpace());

        assertThat(rows)
                .filteredOn(row -> row.title().equals("Headroom at electric equipment"))
                .singleElement()
                .satisfies(row -> assertThat(row.verdict()).isEqualTo(verdict));
    }

    @Test
    void whatNoRuleSetAsksForDoesNotApply() {
        Trial trial = Trial.in(TrialBody.of(4000, 2000, 2300)).floor("board", BOARD, 0, 0);

        for (var limit : List.of(
                new ElectricSpace(),
                new RackFront(),
                new DrawerFront(),
                new WorkPlaceSpace(),
                new SplitAisle(),
                new ExitCeiling())) {
            assertThat(trial.rows(limit)).singleElement().satisfies(row -> {
                assertThat(row.doesNotApply()).isTrue();
                assertThat(row.state()).isEqualTo("does not apply");
                assertThat(row.verdict()).isEqualTo(Verdict.MET);
                assertThat(row.finding()).startsWith("No rule set ");
            });
        }
    }

    /** MIL-STD-1472F and G, from memory: 1.07 m (42 in) before a rack. */
    @ParameterizedTest
    @CsvSource({"42 in, CLOSE", "1066.799, BROKEN"})
    void aRackHas42InchesBeforeIt(String distance, Verdict verdict) {
        TrialItem rack = TrialItem.of("rack", 300, 600, 1800)
                .kind(ItemKind.RACK)
                .zone(Purpose.SERVICE, Box.ofMm(300, 0, 0, 900, 600, 1800));

        Row row = Trial.in(TrialBody.of(4000, 2000, 2300))
                .rules("military-us")
                .floor("rack", rack, 0, 0)
                .put("bench", TrialItem.of("bench", 600, 600, 900), before(distance))
                .rows(new RackFront())
                .get(0);

        assertThat(row.verdict()).isEqualTo(verdict);
        assertThat(row.title()).isEqualTo("Room before Rack: service 0");
        assertThat(row.source().text()).endsWith("(from memory)");
    }

    /** MIL-STD-1472F and G, from memory: 8 in before the deepest drawer. */
    @ParameterizedTest
    @CsvSource({"703.2, CLOSE", "703.199, BROKEN"})
    void aDrawerThatIsOutLeavesEightInches(String distance, Verdict verdict) {
        TrialItem chest = TrialItem.of("chest", 300, 600, 1000)
                .movable("drawer", MovablePart.Kind.DRAWER, Box.ofMm(300, 0, 500, 800, 600, 700), "latch");

        Row row = Trial.in(TrialBody.of(4000, 2000, 2300))
                .rules("military-us")
                .floor("chest", chest, 0, 0)
                .put("bench", TrialItem.of("bench", 600, 600, 900), before(distance))
                .rows(new DrawerFront())
                .get(0);

        assertThat(row.verdict()).isEqualTo(verdict);
        assertThat(row.finding()).startsWith("Before \"drawer\" of Chest, when out, 203.");
    }

    /** NUREG-0700, 12.1.1.3-5: 36 in from the desk to what faces it, 30 in across. */
    @ParameterizedTest
    @CsvSource({"36 in, 762, CLOSE", "914.399, 762, BROKEN", "36 in, 761, BROKEN"})
    void aSeatedPersonHasRoomBehindAndBeside(String distance, int widthMm, Verdict verdict) {
        TrialItem desk = TrialItem.of("desk", 300, 600, 750).zone(Purpose.SEAT, Box.ofMm(300, 0, 0, 900, 600, 1400));

        Row row = Trial.in(TrialBody.of(4000, 2000, 2300))
                .rules("control-room-us")
                .floor("desk", desk, 0, 0)
                .floor("side", TrialItem.of("side", 400, 500, 900), 400, widthMm)
                .floor("stool", TrialItem.of("stool", 400, 400, 500).kind(ItemKind.SEAT), 400, 100)
                .put("bench", TrialItem.of("bench", 600, 600, 900), before(distance))
                .rows(new WorkPlaceSpace())
                .get(0);

        assertThat(row.verdict()).isEqualTo(verdict);
    }

    @Test
    void aSpaceThatTheRoomCannotHoldIsNone() {
        Row row = Trial.in(TrialBody.of(4000, 700, 2300))
                .rules("control-room-us")
                .floor(
                        "desk",
                        TrialItem.of("desk", 300, 600, 750).zone(Purpose.SEAT, Box.ofMm(300, 0, 0, 900, 600, 1400)),
                        0,
                        0)
                .rows(new WorkPlaceSpace())
                .get(0);

        assertThat(row.capacity()).isZero();
        assertThat(row.finding()).contains("up to the walls beside it");
        assertThat(row.mend()).isEqualTo("Find another place for Desk.");
    }

    /** 29 CFR 1910.36(g)(1): ceiling 7 ft 6 in. */
    @ParameterizedTest
    @CsvSource({"2286, CLOSE", "2285, BROKEN"})
    void theRoofOverAWayOutIsSevenAndAHalfFeetHigh(int heightMm, Verdict verdict) {
        Row row = first(
                Trial.in(TrialBody.of(4000, 2000, heightMm))
                        .rules("workplace-us")
                        .floor("rack", RACK, 0, 0),
                new ExitCeiling());

        assertThat(row.verdict()).isEqualTo(verdict);
        assertThat(row.source().text()).startsWith("29 CFR 1910.36, (g)(1)");
    }

    /** 29 CFR 1910.36(g)(1): nothing hangs lower than 6 ft 8 in over a way out. */
    @ParameterizedTest
    @CsvSource({"2032, false", "2031, true"})
    void whatHangsOverAWayOutIsInTheWayBelowSixFeetEight(int lowestMm, boolean inTheWay) {
        TrialItem desk = TrialItem.of("desk", 300, 2000, 750).zone(Purpose.SEAT, Box.ofMm(-900, 0, 0, 0, 2000, 1400));
        TrialItem duct = TrialItem.of("duct", 300, 2000, 2300 - lowestMm).on(Surface.ROOF);

        Row row = first(
                Trial.in(TrialBody.of(4000, 2000, 2300).rearDoor(0, 2000))
                        .rules("workplace-us")
                        .limit(Figure.WALKWAY_HEADROOM, 1900)
                        .floor("desk", desk, 3700, 0)
                        .put("duct", duct, Trial.at(Surface.ROOF, 1500, 0, lowestMm, QuarterTurn.R0)),
                new WayOut());

        assertThat(row.verdict()).isEqualTo(inTheWay ? Verdict.BROKEN : Verdict.MET);
    }

    /** 14 CFR 25.815: below and from 25 in, by the number of seats. */
    @ParameterizedTest
    @CsvSource({
        "aisle-us-10-seats, 305, 381, true",
        "aisle-us-10-seats, 304, 381, false",
        "aisle-us-10-seats, 305, 380, false",
        "aisle-us-19-seats, 305, 508, true",
        "aisle-us-19-seats, 305, 507, false",
        "aisle-us-20-seats, 381, 508, true",
        "aisle-us-20-seats, 380, 508, false"
    })
    void anAisleIsWiderAboveThanBelow(String rules, int belowMm, int aboveMm, boolean holds) {
        TrialItem target =
                TrialItem.of("target", 100, 2000, 1800).zone(Purpose.SERVICE, Box.ofMm(-900, 0, 0, 0, 2000, 1800));
        Trial trial = Trial.in(TrialBody.of(4000, 2000, 2300).rearDoor(0, 2000))
                .rules(rules)
                .limit(Figure.WALKWAY_HEADROOM, 1900)
                .floor("target", target, 3900, 0)
                .floor("seats", TrialItem.of("seats", 600, 2000 - belowMm, 635), 1000, 0)
                .put(
                        "shelf",
                        TrialItem.of("shelf", 600, 2000 - aboveMm, 600).on(Surface.ROOF),
                        Trial.at(Surface.ROOF, 1000, 0, 1700, QuarterTurn.R0));

        List<Row> rows = trial.rows(new SplitAisle());

        assertThat(rows).hasSize(2);
        assertThat(rows.stream().noneMatch(row -> row.verdict() == Verdict.BROKEN))
                .isEqualTo(holds);
        if (!holds) {
            assertThat(rows.get(0).finding())
                    .contains("The way to the service zone \"service 0\" of Target narrows to");
        }
    }
}
