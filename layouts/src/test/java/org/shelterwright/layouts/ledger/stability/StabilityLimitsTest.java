package org.shelterwright.layouts.ledger.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.catalog.carrier.Carrier.Kind;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.rig.Rig;
import org.shelterwright.layouts.rig.TestCarrier;
import org.shelterwright.layouts.rules.Figure;

class StabilityLimitsTest {

    /**
     * Heights that the published factors ask for on a track of 1500 mm: NHTSA DOT HS 809 868, sales-weighted means of model year
     * 2003 (cars 1.41, utility vehicles 1.17, pickups 1.18, minivans 1.24, full-size vans 1.12).
     */
    @ParameterizedTest
    @CsvSource({"532, 1.41", "641, 1.17", "636, 1.18", "605, 1.24", "670, 1.12"})
    void staticFactorsAgreeWithThePublishedOnes(int heightMm, double published) {
        Row row = empty(1500, heightMm).limit(Figure.STATIC_STABILITY_FACTOR, 1).row(new StaticFactor());

        assertThat(row.capacity()).isCloseTo(published, within(0.005));
        assertThat(row.verdict()).isNotEqualTo(Verdict.BROKEN);
    }

    /** tan(phi) = T/2h: 26.5° (NFPA 1901, from memory) is T/2h = 0.4986, 23° (UN R111, from memory) is 0.4245. */
    @Test
    void theTiltAngleIsTheArcTangentOfHalfTheTrackOverTheHeight() {
        Row row = empty(2000, 2005).limit(Figure.TILT_ANGLE, 26.5).row(new TiltAngle());
        Row lower = empty(2000, 2006).limit(Figure.TILT_ANGLE, 26.5).row(new TiltAngle());

        assertThat(row.capacity()).isCloseTo(26.507, within(0.001));
        assertThat(row.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(lower.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(lower.finding()).isEqualTo("Truck tips at 26.5° on rigid springs, and must stand 26.5°.");
        assertThat(Math.toDegrees(Math.atan(0.4245))).isCloseTo(23, within(0.01));
    }

    /** A side slope of 30 % is 16.70°. */
    @Test
    void theSideSlopeIsTheTangentOfTheTiltAngle() {
        Row slope = empty(600, 1000).limit(Figure.SIDE_SLOPE, 0.3).row(new SideSlope());
        Row tilt = empty(600, 1000).limit(Figure.TILT_ANGLE, 10).row(new TiltAngle());

        assertThat(slope.capacity()).isCloseTo(0.3, within(1e-12));
        assertThat(slope.verdict()).isNotEqualTo(Verdict.BROKEN);
        assertThat(tilt.capacity()).isCloseTo(16.70, within(0.005));
    }

    @Test
    void massOffTheMiddleTipsEarlierToItsSide() {
        // given 5000 kg empty at 1 m and 5000 kg 0.5 m to the right, at 1 m too: 0.25 m off, so (1 − 0.25) / 1
        Rig rig = empty(2000, 1000).limit(Figure.SIDE_SLOPE, 0.7).cube("box", 5000, 2000, 0, -700);

        Row row = rig.row(new SideSlope());

        assertThat(row.capacity()).isCloseTo(0.75, within(1e-9));
        assertThat(empty(2000, 1000)
                        .limit(Figure.SIDE_SLOPE, 0.7)
                        .cube("box", 5000, 2000, 1000, -700)
                        .row(new SideSlope())
                        .capacity())
                .isCloseTo(0.75, within(1e-9));
    }

    @Test
    void theHighestLoadStateGovernsAndIsNamed() {
        // given a tank of 1000 kg 3 m above ground on a truck of 5000 kg with its centre at 1 m: 8000 / 6000 m
        Tank tank = new Tank("water", Point.ofMm(500, 500, 500), 0, 1000);
        Rig rig = empty(2000, 1000)
                .limit(Figure.CENTRE_HEIGHT_TO_TRACK, 0.6)
                .put(
                        "tower",
                        Rig.item("tower", Size.ofMm(1000, 1000, 1000), Rig.mass(0, 0, 0, 0), tank),
                        Rig.at(0, 500, 1300),
                        null);

        Row row = rig.row(new HeightToTrack());

        assertThat(row.demand()).isCloseTo(4.0 / 6, within(1e-9));
        assertThat(row.state()).isEqualTo("on the road, water of Tower full");
        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding())
                .isEqualTo(
                        "The centre of mass of Truck lies up to 1333 mm above ground, 66.7 % of the rear track; allowed"
                                + " are 60 %.");
        assertThat(row.mend()).isEqualTo("Bring the centre of mass 133 mm lower.");
    }

    /** Axles at 0 and −4 m bear 3 and 2 t: the centre lies 1.6 m behind the front axle and 2.4 m before the rear one. */
    @Test
    void theGradeIsHeldUphillAndDownhill() {
        Row row = empty(2000, 1000).limit(Figure.GRADE, 0.6).row(new Grade());
        Row rearward = empty(2000, 1000)
                .limit(Figure.GRADE, 0.6)
                .cube("box", 5000, 0, 500, -700)
                .row(new Grade());

        assertThat(row.capacity()).isCloseTo(1.6, within(1e-9));
        assertThat(row.finding()).isEqualTo("Truck facing downhill tips on a grade of 160 %, and must stand on 60 %.");
        assertThat(rearward.capacity()).isCloseTo((2.4 - 0.5) / 2, within(1e-9));
        assertThat(rearward.finding()).startsWith("Truck facing uphill");
    }

    @Test
    void withoutTheHeightOfTheEmptyCarrierNothingIsAssessed() {
        Rig rig = new Rig()
                .limit(Figure.STATIC_STABILITY_FACTOR, 1)
                .limit(Figure.TILT_ANGLE, 20)
                .limit(Figure.SIDE_SLOPE, 0.3)
                .limit(Figure.GRADE, 0.6)
                .limit(Figure.CENTRE_HEIGHT_TO_TRACK, 0.8)
                .carrier(TestCarrier.truck().height(null).build());

        for (Limit limit : StabilityLimits.all()) {
            Row row = rig.row(limit);
            assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
            assertThat(row.finding())
                    .isEqualTo("The carrier Truck has no height of its empty centre of mass. Give tareCentreHeight in"
                            + " carrier truck.");
        }
    }

    @Test
    void figuresThatNoRuleStatesMakeRowsNotAssessed() {
        Rig rig = empty(2000, 1000);

        for (Limit limit : StabilityLimits.all()) {
            assertThat(rig.row(limit).finding())
                    .isEqualTo("No rule set states " + limit.id() + ". Choose one that does, or set it in the brief.");
        }
    }

    @Test
    void theTrailerIsHeldToo() {
        Rig rig = new Rig()
                .limit(Figure.STATIC_STABILITY_FACTOR, 1)
                .carrier(TestCarrier.truck()
                        .coupling(-5500, 500, 100.0, null, null)
                        .build())
                .trailer(TestCarrier.centreAxleTrailer().height(600).build());

        List<Row> rows = rig.rows(new StaticFactor());

        assertThat(rows)
                .extracting(Row::title)
                .containsExactlyInAnyOrder("Static stability factor of Truck", "Static stability factor of Trailer");
        assertThat(rows.stream()
                        .filter(row -> row.title().endsWith("Trailer"))
                        .findFirst()
                        .orElseThrow()
                        .capacity())
                .isCloseTo(1.5, within(1e-12));
    }

    @Test
    void whatTipsTooEarlySaysHowToMendIt() {
        // given a track of 2000 mm and a centre 1250 mm above ground, with ± 50 kg of 5000 kg 2 m above ground
        MassData box = new MassData(1000.0, Point.ofMm(500, 500, 500), MassBasis.WEIGHED, null, 50.0, null);
        Rig rig = empty(2000, 1100)
                .limit(Figure.STATIC_STABILITY_FACTOR, 0.9)
                .limit(Figure.TILT_ANGLE, 45)
                .limit(Figure.SIDE_SLOPE, 1)
                .limit(Figure.GRADE, 2)
                .put("box", Rig.item("box", Size.ofMm(1000, 1000, 1000), box), Rig.at(2000, 500, 300), null);
        double highest = (5000 * 1.1 + 1050 * 2) / 6050;
        double nominal = (5000 * 1.1 + 1000 * 2) / 6000;

        Row factor = rig.row(new StaticFactor());
        Row tilt = rig.row(new TiltAngle());

        assertThat(factor.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(factor.capacity()).isCloseTo(1 / highest, within(1e-9));
        assertThat(factor.nominal()).isCloseTo(1 / nominal, within(1e-9));
        assertThat(factor.finding())
                .isEqualTo(
                        "The centre of mass of Truck lies up to 1256 mm above ground, on a track of 2000 mm: factor 0.796,"
                                + " needed 0.9.");
        assertThat(factor.mend()).isEqualTo("Bring the centre of mass 145 mm lower.");
        assertThat(tilt.capacity()).isCloseTo(Math.toDegrees(Math.atan(1 / highest)), within(1e-9));
        assertThat(tilt.nominal()).isCloseTo(Math.toDegrees(Math.atan(1 / nominal)), within(1e-9));
        assertThat(tilt.mend()).isEqualTo("Put heavy units lower and nearer to the middle plane.");
        assertThat(rig.row(new SideSlope()).mend()).isEqualTo("Put heavy units lower and nearer to the middle plane.");
        assertThat(rig.row(new SideSlope()).nominal()).isCloseTo(1 / nominal, within(1e-9));
        assertThat(rig.row(new SideSlope()).finding())
                .isEqualTo("Truck tips on a side slope of 79.6 %, and must stand on 100 %.");
        assertThat(rig.row(new Grade()).mend()).isEqualTo("Move mass to the rear, or lower.");
    }

    @Test
    void whatHoldsNeedsNoMending() {
        Rig rig = empty(2000, 1000)
                .limit(Figure.STATIC_STABILITY_FACTOR, 0.9)
                .limit(Figure.TILT_ANGLE, 40)
                .limit(Figure.SIDE_SLOPE, 0.9)
                .limit(Figure.CENTRE_HEIGHT_TO_TRACK, 0.6)
                .limit(Figure.GRADE, 1);

        for (Limit limit : StabilityLimits.all()) {
            assertThat(rig.row(limit).verdict()).as(limit.id()).isNotEqualTo(Verdict.BROKEN);
            assertThat(rig.row(limit).mend()).as(limit.id()).isNull();
            assertThat(rig.row(limit).state()).isEqualTo("on the road");
        }
    }

    @Test
    void exactlyAtTheLimitNothingIsToBeMended() {
        // given a centre 1 m above ground on a track of 2 m: factor 1, height half the track, slope 1, 45°
        Rig rig = empty(2000, 1000)
                .limit(Figure.STATIC_STABILITY_FACTOR, 1)
                .limit(Figure.TILT_ANGLE, 45)
                .limit(Figure.SIDE_SLOPE, 1)
                .limit(Figure.CENTRE_HEIGHT_TO_TRACK, 0.5);

        for (Limit limit : List.of(new StaticFactor(), new TiltAngle(), new SideSlope(), new HeightToTrack())) {
            assertThat(rig.row(limit).verdict()).as(limit.id()).isEqualTo(Verdict.CLOSE);
            assertThat(rig.row(limit).mend()).as(limit.id()).isNull();
        }
    }

    @Test
    void gradeAndHeightAgainstTrackAreAskedOfTheCarrierOnly() {
        Rig rig = new Rig()
                .limit(Figure.GRADE, 0.1)
                .limit(Figure.CENTRE_HEIGHT_TO_TRACK, 0.8)
                .carrier(TestCarrier.truck()
                        .coupling(-5500, 500, 100.0, null, null)
                        .build())
                .trailer(TestCarrier.centreAxleTrailer().height(600).build());

        for (Limit limit : List.of(new Grade(), new HeightToTrack())) {
            assertThat(rig.row(limit).title()).as(limit.id()).endsWith(" of Truck");
        }
    }

    @Test
    void allLimitsOfTheSubjectAreListed() {
        assertThat(StabilityLimits.all())
                .extracting(Limit::id)
                .containsExactlyInAnyOrder(
                        "stability.static-factor",
                        "stability.tilt-angle",
                        "stability.height-to-track",
                        "stability.side-slope",
                        "stability.grade");
    }

    @Test
    void aTrailerWhosePartCannotBeToldBlocksTheCarrier() {
        Rig rig = new Rig()
                .limit(Figure.TILT_ANGLE, 20)
                .carrier(TestCarrier.truck().build())
                .trailer(TestCarrier.centreAxleTrailer().build());

        List<Row> rows = rig.rows(new TiltAngle());

        assertThat(rows.stream()
                        .filter(row -> row.title().equals("Tilt angle of Truck"))
                        .findFirst()
                        .orElseThrow()
                        .finding())
                .isEqualTo(
                        "What stands on Truck cannot be told: the carrier Truck draws a trailer but has no coupling. Give"
                                + " it in carrier truck.");
    }

    private static Rig empty(int track, int heightMm) {
        return new Rig()
                .carrier(TestCarrier.of(Kind.TRUCK)
                        .bodyAt(-5000, -1000, 1200)
                        .axle(0, track, 3000, 9000.0, 1)
                        .axle(-4000, track, 2000, 9000.0, 2)
                        .height(heightMm)
                        .build());
    }
}
