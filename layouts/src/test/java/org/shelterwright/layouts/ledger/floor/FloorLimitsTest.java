package org.shelterwright.layouts.ledger.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.body.CrossMember;
import org.shelterwright.catalog.body.FloorZone;
import org.shelterwright.catalog.item.ContactPatch;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.source.MassBasis;
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

class FloorLimitsTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final Size CUBE = Size.ofMm(1000, 1000, 1000);
    private static final Rect FLOOR = Rect.ofMm(0, 0, 4000, 2000);
    private static final double G = 9.80665;

    /** One wheel of the floor test of ISO 1496-1: 3631 kg, 35 600 N on 142 cm² (from memory) are 2.51 MPa. */
    @Test
    void pressureIsForceOverArea() {
        Item wheel = standing("wheel", 3631, Rect.ofMm(0, 0, 142, 100));

        Row row = floor(3000, null, null, null)
                .put("wheel", wheel, Rig.at(0, 0, 0), null)
                .row(new PatchPressure());

        assertThat(row.demand()).isCloseTo(3631 * G / 0.0142 / 1000, within(1e-6));
        assertThat(row.demand() / 1000).isCloseTo(2.51, within(0.005));
        assertThat(row.finding())
                .isEqualTo("Wheel presses with 2507.6 kPa under a patch of 142 cm²; main bears 3000 kPa.");
        assertThat(row.place()).isEqualTo(Box.ofMm(0, 0, 0, 142, 100, 0));
        assertThat(row.units()).containsExactly("wheel");
    }

    @Test
    void eachUnitThatPressesTooHardHasItsRow() {
        Rig rig = floor(10, null, null, null)
                .put("a", standing("a", 400, Rect.ofMm(0, 0, 500, 500)), Rig.at(0, 0, 0), null)
                .put("b", standing("b", 300, Rect.ofMm(0, 0, 500, 500)), Rig.at(1000, 0, 0), null)
                .put("c", standing("c", 200, Rect.ofMm(0, 0, 500, 500)), Rig.at(2000, 0, 0), null);

        List<Row> rows = rig.rows(new PatchPressure());

        assertThat(rows).extracting(row -> row.units().get(0)).containsExactly("a", "b");
        assertThat(rows.get(0).verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(rows.get(0).mend()).isEqualTo("Put a larger plate under A, or lighten it.");
    }

    @Test
    void theHeaviestPatchIsHeldAgainstTheConcentratedLoad() {
        Item four = Rig.item(
                "four",
                CUBE,
                Rig.mass(400, 500, 500, 500),
                List.of(foot(0, 0), foot(0, 900), foot(900, 0), foot(900, 900)));

        Row row = floor(null, null, 120.0, null)
                .put("four", four, Rig.at(0, 0, 0), null)
                .row(new ConcentratedLoad());

        assertThat(row.demand()).isCloseTo(100, EXACT);
        assertThat(row.capacity()).isEqualTo(120.0);
        assertThat(row.finding()).isEqualTo("Four stands with 100 kg under a patch of 100 cm²; main bears 120 kg.");
    }

    @Test
    void anUncertainCentreAndMassCountInTheWorstCaseOnly() {
        MassData data = new MassData(400.0, Point.ofMm(500, 500, 500), MassBasis.WEIGHED, null, 40.0, 10_000);
        Item four = Rig.item("four", CUBE, data, List.of(foot(0, 0), foot(0, 900), foot(900, 0), foot(900, 900)));

        Row row = floor(null, null, 120.0, null)
                .put("four", four, Rig.at(0, 0, 0), null)
                .row(new ConcentratedLoad());

        double off = 440 * 0.01 * 2 * 0.45 / (4 * 0.45 * 0.45 + 4 * 0.1 * 0.1 / 12);
        assertThat(row.demand()).isCloseTo(110 + off, EXACT);
        assertThat(row.nominal()).isCloseTo(100, EXACT);
    }

    @Test
    void guestsPressThroughTheirHostAndWallUnitsDoNot() {
        Rig rig = floor(null, null, 500.0, null)
                .put("table", Rig.item("table", CUBE, Rig.mass(50, 500, 500, 500)), Rig.at(0, 0, 0), null)
                .put("radio", Rig.item("radio", CUBE, Rig.mass(20, 500, 500, 500)), on("table"), null)
                .put("clock", Rig.item("clock", CUBE, Rig.mass(5, 500, 500, 500)), on("radio"), null)
                .put(
                        "shelf",
                        Rig.item("shelf", CUBE, Rig.mass(99, 500, 500, 500)),
                        new Place(Surface.WALL, null, Pose.at(Point.ofMm(2000, 0, 1000))),
                        null);

        assertThat(rig.row(new ConcentratedLoad()).demand()).isCloseTo(75, EXACT);
    }

    @Test
    void fullTanksAndTheWorseSituationGovern() {
        Tank tank = new Tank("water", Point.ofMm(500, 500, 500), 10, 60);
        Rig rig = floor(null, null, 500.0, null)
                .put(
                        "sink",
                        Rig.item("sink", CUBE, Rig.mass(40, 500, 500, 500), tank),
                        new Place(Surface.WALL, null, Pose.at(Point.ofMm(2000, 0, 1000))),
                        Rig.at(0, 0, 0));

        Row row = rig.row(new ConcentratedLoad());

        assertThat(row.demand()).isCloseTo(100, EXACT);
        assertThat(row.state()).isEqualTo("on the road, water of Sink full");
    }

    @Test
    void aTankBesideTheFeetCanLoadTheOthersMoreWhenItIsLow() {
        // given a heavy tank beyond the left foot: full, it lifts load off the right one
        Tank tank = new Tank("water", Point.ofMm(500, 950, 500), 0, 100);
        Item cabinet = Rig.item(
                "cabinet",
                CUBE,
                Rig.mass(100, 500, 300, 500),
                List.of(patch(0, 0, 1000, 100), patch(0, 500, 1000, 600)),
                tank);
        Rig rig = new Rig()
                .zone(new FloorZone("right", Rect.ofMm(0, 0, 4000, 300), null, null, 500.0, null))
                .put("cabinet", cabinet, Rig.at(0, 0, 0), null);

        Row row = rig.row(new ConcentratedLoad());

        assertThat(row.state()).isEqualTo("on the road, water of Cabinet low");
        assertThat(row.demand()).isCloseTo(50, EXACT);
    }

    @Test
    void aZoneBearsWhatStandsInItByArea() {
        // given 800 kg on 1 m², a quarter of it in the zone of 1 x 2 m
        Rig rig = new Rig()
                .zone(new FloorZone("front", Rect.ofMm(3000, 0, 4000, 2000), null, 1.0, null, 900.0))
                .cube("box", 800, 2250, 0, 0);

        Row uniform = rig.row(new ZoneLoad());
        Row perMetre = rig.row(new LoadPerMetre());

        assertThat(uniform.demand()).isCloseTo(200 * G / 2 / 1000, EXACT);
        assertThat(uniform.finding()).isEqualTo("front bears 0.98 kPa; allowed are 1 kPa.");
        assertThat(uniform.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(perMetre.demand()).isCloseTo(200, EXACT);
    }

    @Test
    void theHeaviestMetreIsFoundWhereverItBegins() {
        // given 300 kg on 0.5 m at 1.2 m, 400 kg on 0.5 m at 1.9 m: from 1.4 to 2.4 m: 180 + 400; from 1.2 to 2.2: 300
        // + 240
        Rig rig = floor(null, null, null, 500.0)
                .put("a", standing("a", 300, Rect.ofMm(0, 0, 500, 1000)), Rig.at(1200, 0, 0), null)
                .put("b", standing("b", 400, Rect.ofMm(0, 0, 500, 1000)), Rig.at(1900, 500, 0), null);

        Row row = rig.row(new LoadPerMetre());

        assertThat(row.demand()).isCloseTo(580, EXACT);
        assertThat(row.place()).isEqualTo(Box.ofMm(1400, 0, 0, 2400, 2000, 0));
        assertThat(row.finding())
                .isEqualTo("main bears 580 kg/m from 1400 to 2400 mm from the rear wall; allowed are 500 kg/m.");
        assertThat(row.mend()).isEqualTo("Move heavy units out of this part of main.");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void noWindowOfAMetreBearsMore(long seed) {
        Random random = new Random(seed);
        Rig rig = floor(null, null, null, 500.0);
        int[][] units = new int[6][];
        for (int i = 0; i < units.length; i++) {
            units[i] = new int[] {random.nextInt(3000), 50 + random.nextInt(900), 10 + random.nextInt(200)};
            Item item = standing("u" + i, units[i][2], Rect.ofMm(0, 0, units[i][1], 500));
            rig.put("u" + i, item, Rig.at(units[i][0], 0, 0), null);
        }

        double found = rig.row(new LoadPerMetre()).demand();

        double most = 0;
        for (int from = 0; from <= 3000; from++) {
            double kg = 0;
            for (int[] unit : units) {
                int shared = Math.min(unit[0] + unit[1], from + 1000) - Math.max(unit[0], from);
                kg += shared > 0 ? unit[2] * (double) shared / unit[1] : 0;
            }
            most = Math.max(most, kg);
        }
        assertThat(found).as("seed " + seed).isCloseTo(most, EXACT);
    }

    @Test
    void aZoneShorterThanAMetreIsTakenWhole() {
        Rig rig = new Rig()
                .zone(new FloorZone("sill", Rect.ofMm(0, 0, 500, 2000), null, null, null, 300.0))
                .cube("box", 200, 0, 0, 0);

        assertThat(rig.row(new LoadPerMetre()).demand()).isCloseTo(100 / 0.5, EXACT);
    }

    @Test
    void floorWithoutZoneOrRatingIsNotAssessed() {
        Rig none = new Rig().cube("box", 100, 0, 0, 0);
        Rig partly = new Rig()
                .zone(new FloorZone("rear", Rect.ofMm(0, 0, 500, 2000), 100.0, null, null, null))
                .cube("box", 100, 0, 0, 0);

        for (Limit limit : FloorLimits.all()) {
            assertThat(none.row(limit).verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        }
        assertThat(partly.rows(new PatchPressure()))
                .filteredOn(row -> row.title().equals("Floor without rating"))
                .singleElement()
                .satisfies(row -> assertThat(row.finding())
                        .isEqualTo("Box stands on floor that no zone rates. Extend floorZones in body test-body."))
                .satisfies(row -> assertThat(row.units()).containsExactly("box"));
        assertThat(partly.row(new ZoneLoad()).finding())
                .isEqualTo("The floor zone \"rear\" has no such rating. Give uniformKPa in body test-body.");
    }

    @Test
    void withoutCrossMembersTheLoadPerMetreMustBeRated() {
        Rig none = new Rig().cube("box", 100, 0, 0, 0);
        Rig unrated = floor(null, 5.0, null, null).cube("box", 100, 0, 0, 0);
        Rig rated = floor(null, null, null, 500.0).cube("box", 100, 0, 0, 0);

        assertThat(none.row(new MemberMoment()).finding())
                .isEqualTo("The body Test body lists no cross-members, and has no floor zones. Give crossMembers, or"
                        + " perMetreKg of each floor zone, in body test-body.");
        assertThat(unrated.row(new MemberShear()).verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(unrated.row(new MemberShear()).finding())
                .isEqualTo("The body Test body lists no cross-members, and its floor zone \"main\" rates no load per"
                        + " metre. Give crossMembers, or perMetreKg of each floor zone, in body test-body.");
        assertThat(rated.row(new MemberMoment()).doesNotApply()).isTrue();
        assertThat(rated.row(new MemberMoment()).finding())
                .isEqualTo("The body lists no cross-members. Its floor zones rate a load per metre and are judged by"
                        + " that.");
    }

    @Test
    void whatStandsBesideTheRatedFloorIsNotCalledNothing() {
        Rig rig = new Rig()
                .zone(new FloorZone("rear", Rect.ofMm(0, 0, 500, 2000), 100.0, null, 50.0, null))
                .cube("box", 100, 1000, 0, 0);

        assertThat(rig.row(new ConcentratedLoad()).doesNotApply()).isTrue();
        assertThat(rig.row(new ConcentratedLoad()).finding()).isEqualTo("Nothing stands on a rated part of the floor.");
    }

    @Test
    void aPatchOverTwoZonesCountsWholeInBothAndIsCovered() {
        Rig rig = new Rig()
                .zone(new FloorZone("rear", Rect.ofMm(0, 0, 500, 2000), 100.0, null, 100.0, null))
                .zone(new FloorZone("front", Rect.ofMm(500, 0, 4000, 2000), 100.0, null, 100.0, null))
                .cube("box", 80, 0, 0, 0);

        assertThat(rig.rows(new ConcentratedLoad()))
                .hasSize(2)
                .allSatisfy(row -> assertThat(row.demand()).isCloseTo(80, EXACT));
        assertThat(rig.rows(new PatchPressure())).hasSize(2);
    }

    @Test
    void aMassThatIsNotStatedMakesItNotAssessedUnlessBrokenAnyway() {
        MassData none = new MassData(null, null, MassBasis.WEIGHED, null, null, null);
        Rig rig = floor(100, 1.0, 50.0, 50.0)
                .member(member("m", 1000, 10, 10))
                .put("rack", Rig.item("rack", CUBE, none), Rig.at(0, 0, 0), null);

        for (Limit limit : FloorLimits.all()) {
            assertThat(rig.row(limit).verdict()).as(limit.id()).isEqualTo(Verdict.NOT_ASSESSED);
        }
        rig.cube("box", 500, 1000, 0, 0);
        assertThat(rig.row(new ConcentratedLoad()).verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(rig.row(new ZoneLoad()).verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(rig.row(new MemberMoment()).verdict()).isEqualTo(Verdict.BROKEN);
    }

    /** The lever rule: a load on a quarter of the way goes 3/4 to the nearer support; over a patch, its mean. */
    @ParameterizedTest
    @CsvSource({
        "1250, 1250, 0.25",
        "1000, 2000, 0.5",
        "1500, 2500, 0.75",
        "2000, 3000, 0.5",
        "2750, 2750, 0.25",
        "0, 1000, 0",
        "3000, 4000, 0",
        "1000, 3000, 0.5"
    })
    void loadsGoToTheNeighboursByTheLeverRule(int x0, int x1, double share) {
        assertThat(MemberLoads.share(x0, x1 == x0 ? x0 + 1 : x1, 1000, 2000, 3000))
                .isCloseTo(share, within(0.001));
    }

    @Test
    void theOuterMembersBearWhatStandsBeyondThem() {
        assertThat(MemberLoads.share(0, 1000, Integer.MIN_VALUE, 1000, 2000)).isEqualTo(1);
        assertThat(MemberLoads.share(0, 2000, Integer.MIN_VALUE, 1000, 2000)).isEqualTo(0.75);
        assertThat(MemberLoads.share(3000, 4000, 2000, 3000, Integer.MAX_VALUE)).isEqualTo(1);
        assertThat(MemberLoads.share(2000, 4000, 2000, 3000, Integer.MAX_VALUE)).isEqualTo(0.75);
        assertThat(MemberLoads.share(0, 9000, Integer.MIN_VALUE, 3000, Integer.MAX_VALUE))
                .isEqualTo(1);
    }

    /** 4.1: w b (2 L − b) / 8 on the middle member, half of the unit's mass by the lever rule. */
    @Test
    void aMemberBendsUnderItsPartOfAPatch() {
        // given 400 kg on 1 x 1 m midway between two members of 2 m
        Rig rig = floor(null, null, null, null)
                .member(member("front", 2500, 1000, 900))
                .member(member("rear", 500, 500, 900))
                .cube("box", 400, 1000, 500, 0);

        List<Row> moments = rig.rows(new MemberMoment());
        List<Row> shears = rig.rows(new MemberShear());

        double moment = 200 * G * 1.0 * (2 * 2 - 1) / 8;
        assertThat(moments)
                .hasSize(2)
                .allSatisfy(row -> assertThat(row.demand()).isCloseTo(moment, EXACT));
        assertThat(moments.get(0).verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(moments.get(0).finding()).isEqualTo("rear bears 735 of 500 N·m.");
        assertThat(moments.get(0).place()).isEqualTo(Box.ofMm(500, 0, 0, 500, 2000, 0));
        assertThat(moments.get(1).title()).isEqualTo("Bending moment of front");
        assertThat(shears).hasSize(2).allSatisfy(row -> assertThat(row.demand()).isCloseTo(100 * G, EXACT));
        assertThat(shears.get(0).verdict()).isEqualTo(Verdict.BROKEN);
    }

    @Test
    void aMemberWithoutRatingIsNotAssessedButItsLoadIsTold() {
        Rig rig = floor(null, null, null, null)
                .member(new CrossMember("sill", 1000_000, 0, 2000_000, null, null))
                .cube("box", 400, 500, 500, 0);

        assertThat(rig.row(new MemberMoment()).finding())
                .isEqualTo(
                        "The cross-member \"sill\" has no such rating. Give momentNm in body test-body. It bears 1471"
                                + " N·m.");
        assertThat(rig.row(new MemberShear()).verdict()).isEqualTo(Verdict.NOT_ASSESSED);
    }

    private static Rig floor(Integer pressure, Double uniform, Double concentrated, Double perMetre) {
        return new Rig()
                .zone(new FloorZone(
                        "main",
                        FLOOR,
                        pressure == null ? null : pressure.doubleValue(),
                        uniform,
                        concentrated,
                        perMetre));
    }

    private static CrossMember member(String name, int x, double momentNm, double shearN) {
        return new CrossMember(name, x * 1000, 0, 2_000_000, momentNm, shearN);
    }

    /** Stands on one patch with its centre of mass over the middle of it. */
    private static Item standing(String id, double kg, Rect patch) {
        int x = patch.x1() / 2000;
        int y = patch.y1() / 2000;
        return Rig.item(id, CUBE, Rig.mass(kg, x, y, 500), List.of(new ContactPatch("plate", patch)));
    }

    private static ContactPatch foot(int x, int y) {
        return patch(x, y, x + 100, y + 100);
    }

    private static ContactPatch patch(int x0, int y0, int x1, int y1) {
        return new ContactPatch("foot", Rect.ofMm(x0, y0, x1, y1));
    }

    private static Place on(String host) {
        return new Place(Surface.ON_UNIT, host, Pose.at(Point.ofMm(0, 0, 1000)));
    }
}
