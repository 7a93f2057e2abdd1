package org.shelterwright.layouts.ledger.access;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;

/** Clearances that are published bind to the micrometre when they are set as figures or zones. */
class PublishedClearancesTest {
    @ParameterizedTest
    @CsvSource({"711.199, BROKEN", "711.2, CLOSE"})
    void anExitOf28InchesIsWideEnough(String widthMm, Verdict verdict) {
        // 29 CFR 1910.36(g)(2): an exit access must be at least 28 inches (71.1 cm) wide
        int width = Lengths.parse(widthMm);
        TrialBody body = TrialBody.of(4000, 2000, 2300)
                .opening("door", Opening.Kind.DOOR, Face.REAR, new Box(0, 0, 0, 0, width, 2_000_000), true, null);

        Row row = Trial.in(body)
                .limit(Figure.EXIT_WIDTH, 28 * 25.4)
                .floor("box", TrialItem.of("box", 100, 100, 100), 0, 0)
                .rows(new ExitSize())
                .get(0);

        assertThat(row.verdict()).isEqualTo(verdict);
        assertThat(row.demand()).isEqualTo(711.2);
    }

    @ParameterizedTest
    @CsvSource({"3 ft, MET", "914.399, BROKEN", "914.401, MET"})
    void threeFeetStayFreeBeforeLiveParts(String distance, Verdict verdict) {
        // 29 CFR 1910.303(g), Table S-1, 0-150 V to ground: 3 ft of clear depth (seen in a state code with the same
        // table)
        int depth = Lengths.parse("3 ft");
        Box zone = new Box(300_000, 0, 0, 300_000 + depth, 800_000, 1_980_000);
        TrialItem board = TrialItem.of("board", 300, 800, 1900).zone(Purpose.SERVICE, zone);
        Place opposite = Place.onFloor(Pose.at(new Point(300_000 + Lengths.parse(distance), 0, 0)));

        Row row = Trial.in(TrialBody.of(4000, 2000, 2300))
                .floor("board", board, 0, 0)
                .put("rack", TrialItem.of("rack", 800, 600, 1800), opposite)
                .rows(new ZonesFree())
                .get(0);

        assertThat(row.verdict()).isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({"1.07 m, MET", "1069.999, BROKEN"})
    void aRackHas42InchesToTheFacingSurface(String distance, Verdict verdict) {
        // MIL-STD-1472, clearance from the front of a rack to the nearest facing surface: 1.07 m (from memory)
        TrialItem rack =
                TrialItem.of("rack", 800, 600, 1800).zone(Purpose.SERVICE, Box.ofMm(800, 0, 0, 1870, 600, 1800));
        Place opposite = Place.onFloor(Pose.at(new Point(800_000 + Lengths.parse(distance), 0, 0)));

        Row row = Trial.in(TrialBody.of(4000, 2000, 2300))
                .floor("rack", rack, 0, 0)
                .put("facing", TrialItem.of("facing", 800, 600, 1800), opposite)
                .rows(new ZonesFree())
                .get(0);

        assertThat(row.verdict()).isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({"381, 508, true", "380, 508, false", "381, 507, false"})
    void anAisleMayBeNarrowerBelow25Inches(int belowMm, int aboveMm, boolean holds) {
        // 14 CFR 25.815, 20 seats or more: 15 in below 25 in from the floor, 20 in from there on.
        // An aisle of two widths is judged as two walkways: one up to 25 in high, one that steps over what is lower.
        TrialItem target =
                TrialItem.of("target", 100, 2000, 1800).zone(Purpose.SERVICE, Box.ofMm(-900, 0, 0, 0, 2000, 1800));
        TrialItem seats = TrialItem.of("seats", 600, 700, 635);
        TrialItem overhead = TrialItem.of("overhead", 600, 700, 600).on(Surface.ROOF);
        Trial trial = Trial.in(TrialBody.of(4000, 2000, 2300).rearDoor(0, 2000))
                .floor("target", target, 3900, 0)
                .floor("right", seats, 1000, 0)
                .floor("left", TrialItem.of("others", 600, 1300 - belowMm, 635), 1000, 700 + belowMm)
                .put(
                        "rightUp",
                        overhead,
                        Trial.at(
                                Surface.ROOF,
                                1000,
                                0,
                                1700,
                                Pose.at(Point.ORIGIN).yaw()))
                .put(
                        "leftUp",
                        TrialItem.of("overheads", 600, 1300 - aboveMm, 600).on(Surface.ROOF),
                        Trial.at(
                                Surface.ROOF,
                                1000,
                                700 + aboveMm,
                                1700,
                                Pose.at(Point.ORIGIN).yaw()));

        boolean below = holds(trial.limit(Figure.STEP_HEIGHT, 0)
                .limit(Figure.WALKWAY_HEADROOM, 635)
                .limit(Figure.WALKWAY_WIDTH, 381));
        boolean above = holds(trial.limit(Figure.STEP_HEIGHT, 635)
                .limit(Figure.WALKWAY_HEADROOM, 1900)
                .limit(Figure.WALKWAY_WIDTH, 508));

        assertThat(below && above).isEqualTo(holds);
    }

    private static boolean holds(Trial trial) {
        return trial.rows(new Walkways()).stream().noneMatch(row -> row.verdict() == Verdict.BROKEN);
    }

    @Test
    void anInchOfWalkwayIsExactlyThat() {
        // 25.4 mm by definition; the figure is in mm
        assertThat(Floor.micrometres(20 * 25.4)).isEqualTo(20 * Lengths.INCH);
        assertThat(Floor.micrometres(1e12)).isEqualTo(500_000_000);
    }
}
