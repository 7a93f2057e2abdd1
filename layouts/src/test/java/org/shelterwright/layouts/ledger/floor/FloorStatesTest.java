package org.shelterwright.layouts.ledger.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.body.CrossMember;
import org.shelterwright.catalog.body.FloorZone;
import org.shelterwright.catalog.item.ContactPatch;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.rig.Rig;
import org.shelterwright.layouts.trial.TrialItem;

/** The floor in every combination of tanks and people, held against a plain run over all of them. */
class FloorStatesTest {
    private static final Size CUBE = Size.ofMm(1000, 1000, 1000);
    private static final Rect FLOOR = Rect.ofMm(0, 0, 4000, 2000);

    private record Drawn(int x, int y, double kg, int[][] feet, int[][] tanks, boolean onTop) {}

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void theWorstCombinationOfTanksGoverns(long seed) {
        Random random = new Random(seed);
        List<Drawn> drawn = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            drawn.add(draw(random, i));
        }
        Map<String, Double> most = new HashMap<>();
        int tanks = drawn.stream().mapToInt(one -> one.tanks().length).sum();

        // when every combination is laid out by itself, with tanks that are fixed
        for (int c = 0; c < 1 << tanks; c++) {
            for (Limit limit : FloorLimits.all()) {
                for (Row row : rig(drawn, c, true).rows(limit)) {
                    most.merge(row.limit() + row.title(), row.demand(), Math::max);
                }
            }
        }

        for (Limit limit : FloorLimits.all()) {
            for (Row row : rig(drawn, 0, false).rows(limit)) {
                assertThat(row.demand())
                        .as("seed " + seed + ", " + row.title() + ", " + row.state())
                        .isCloseTo(most.get(row.limit() + row.title()), within(1e-6));
            }
        }
    }

    private static Drawn draw(Random random, int number) {
        int[][] feet = {{0, 0}, {0, 900}, {900, 0}, {900, 900}};
        int[][] tanks = new int[1 + random.nextInt(2)][];
        for (int i = 0; i < tanks.length; i++) {
            tanks[i] = new int[] {
                200 + random.nextInt(600), random.nextInt(1000), random.nextInt(20), 20 + random.nextInt(60)
            };
        }
        boolean onTop = number == 3 && random.nextBoolean();
        return new Drawn(random.nextInt(3000), random.nextInt(1000), 300 + random.nextInt(200), feet, tanks, onTop);
    }

    private static Rig rig(List<Drawn> drawn, int combination, boolean fixed) {
        Rig rig = new Rig()
                .zone(new FloorZone("rear", Rect.ofMm(0, 0, 1700, 2000), 1e6, 1e6, 1e6, 1e6))
                .zone(new FloorZone("front", Rect.ofMm(1700, 0, 4000, 2000), 1e6, 1e6, 1e6, 1e6))
                .member(new CrossMember("first", 600_000, 100_000, 1_700_000, 1e6, 1e6))
                .member(new CrossMember("second", 1_900_000, 400_000, 1_500_000, 1e6, 1e6));
        int bit = 0;
        for (int i = 0; i < drawn.size(); i++) {
            Drawn one = drawn.get(i);
            Tank[] tanks = new Tank[one.tanks().length];
            for (int t = 0; t < tanks.length; t++) {
                int[] tank = one.tanks()[t];
                double full = tank[2] + tank[3];
                double kg = (combination >> bit++ & 1) == 1 ? full : tank[2];
                Point at = Point.ofMm(tank[0], tank[1], 500);
                tanks[t] = new Tank("tank " + t, at, fixed ? kg : tank[2], fixed ? kg : full);
            }
            List<ContactPatch> feet = new ArrayList<>();
            for (int[] foot : one.feet()) {
                feet.add(new ContactPatch("foot", Rect.ofMm(foot[0], foot[1], foot[0] + 100, foot[1] + 100)));
            }
            Item item = Rig.item("u" + i, CUBE, Rig.mass(one.kg(), 500, 450, 500), feet, tanks);
            Place place = one.onTop()
                    ? new Place(
                            Surface.ON_UNIT,
                            "u0",
                            Pose.at(Point.ofMm(drawn.get(0).x(), drawn.get(0).y(), 1000)))
                    : Rig.at(one.x(), one.y(), 0);
            rig.put("u" + i, item, place, null);
        }
        return rig;
    }

    @Test
    void mixedTanksGovernWhereOneStandsBeyondTheFeet() {
        // given two tanks in a cabinet on two runners, one midway between them, the far one beyond the left one
        Item cabinet = Rig.item(
                "cabinet",
                CUBE,
                Rig.mass(100, 500, 300, 500),
                List.of(
                        new ContactPatch("right", Rect.ofMm(0, 0, 1000, 100)),
                        new ContactPatch("left", Rect.ofMm(0, 500, 1000, 600))),
                new Tank("near", Point.ofMm(500, 300, 500), 0, 40),
                new Tank("far", Point.ofMm(500, 950, 500), 0, 60));
        Rig rig = new Rig()
                .zone(new FloorZone("right", Rect.ofMm(0, 0, 4000, 300), null, null, 500.0, null))
                .put("cabinet", cabinet, Rig.at(0, 0, 0), null);

        Row row = rig.row(new ConcentratedLoad());

        assertThat(row.state()).isEqualTo("on the road, near of Cabinet full, far of Cabinet low");
        assertThat(row.demand()).isCloseTo(50 + 20, within(1e-9));
    }

    @Test
    void moreTanksThanAreTriedAreNotAssessed() {
        Tank[] many = new Tank[Standing.MOST_CONTENTS + 1];
        for (int i = 0; i < many.length; i++) {
            many[i] = new Tank("bottle " + i, Point.ofMm(500, 500, 500), 0, 1);
        }
        Rig rig = new Rig()
                .zone(new FloorZone("main", FLOOR, 1e6, 1e6, 1e6, 1e6))
                .put("frame", Rig.item("frame", CUBE, Rig.mass(50, 500, 500, 500), many), Rig.at(0, 0, 0), null);

        Row row = rig.row(new ZoneLoad());

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding())
                .isEqualTo(
                        "Frame carries more than 10 tanks and people; not all their combinations are tried. Take some"
                                + " together as one tank.");
    }

    @Test
    void moreCombinationsOnOneMemberThanAreTriedAreNotAssessed() {
        Rig rig = new Rig()
                .zone(new FloorZone("main", FLOOR, 1e6, 1e6, 1e6, 1e6))
                .member(new CrossMember("sill", 1_000_000, 0, 2_000_000, 1e6, 1e6));
        for (int i = 0; i < 13; i++) {
            Tank tank = new Tank("water", Point.ofMm(500, 500, 500), 0, 1);
            rig.put("u" + i, Rig.item("u" + i, CUBE, Rig.mass(50, 500, 500, 500), tank), Rig.at(100 * i, 0, 0), null);
        }

        Row row = rig.row(new MemberMoment());

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding())
                .isEqualTo("Too many tanks and people bear on sill to try all their combinations. Take some together as"
                        + " one tank.");
    }

    @Test
    void aPersonAtWorkPressesOnTheFloorUnderTheSeatZone() {
        Item desk = TrialItem.of("desk", 600, 1000, 750)
                .mass(40.0, Point.ofMm(300, 500, 600))
                .zone(Purpose.SEAT, Box.ofMm(600, 0, 0, 1600, 1000, 1400))
                .build();
        Rig rig = new Rig()
                .zone(new FloorZone("rear", Rect.ofMm(0, 0, 600, 2000), 1e6, 1e6, 1e6, 1e6))
                .zone(new FloorZone("front", Rect.ofMm(600, 0, 4000, 2000), 1e6, 1e6, 1e6, 1e6))
                .put("desk", desk, Rig.at(0, 0, 0), null)
                .occupant("desk", Situation.ON_STATION);

        List<Row> rows = rig.rows(new LoadPerMetre());
        List<Row> patches = rig.rows(new ConcentratedLoad());

        assertThat(rows).extracting(Row::demand).containsExactlyInAnyOrder(40 / 0.6, 75.0);
        assertThat(rows)
                .filteredOn(row -> row.title().endsWith("front"))
                .singleElement()
                .satisfies(row -> assertThat(row.state()).isEqualTo("on station, everybody inside"));
        assertThat(patches).filteredOn(row -> row.title().endsWith("front")).isEmpty();
        assertThat(rig.rows(new PatchPressure())).noneMatch(row -> row.title().equals("Floor without rating"));
    }

    @Test
    void aRiderPressesThroughTheSeat() {
        Item seat = TrialItem.of("seat", 500, 500, 1100)
                .kind(ItemKind.SEAT)
                .bolted()
                .mass(30.0, Point.ofMm(250, 250, 400))
                .build();
        Rig rig = new Rig()
                .zone(new FloorZone("main", FLOOR, 1e6, 1e6, 1e6, 1e6))
                .put("seat", seat, Rig.at(0, 0, 0), null)
                .occupant("seat", Situation.ON_THE_ROAD);

        Row row = rig.row(new ConcentratedLoad());

        assertThat(row.demand()).isCloseTo(105, within(1e-9));
        assertThat(row.state()).isEqualTo("on the road, everybody inside");
    }
}
