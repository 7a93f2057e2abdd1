package org.shelterwright.layouts.ledger.lifting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.rig.Rig;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.samples.Samples;

class LiftingLimitsTest {
    private static final double G = 9.80665;

    /** MIL-STD-209K, appendix C, sample problem: 20 000 lb, S 5 and 10, L 10 and 15, vertical total 2.0 times the mass. */
    @Test
    void tieDownSharesAgreeWithThePublishedProblem() {
        FourPoints points = new FourPoints(-15, 10, -10, 5);

        double[] shares = points.shares(0, 0);

        assertThat(40_000 * shares[1]).isCloseTo(40_000 * 10.0 / 15 * 10.0 / 25, within(1e-6));
        assertThat(40_000 * shares[1]).isCloseTo(10_667, within(0.5));
        assertThat(40_000 * shares[0]).isCloseTo(5_333, within(0.5));
        assertThat(40_000 * shares[3]).isCloseTo(16_000, within(0.5));
        assertThat(40_000 * shares[2]).isCloseTo(8_000, within(0.5));
        assertThat(1.5 * 40_000 * shares[3]).isCloseTo(24_000, within(0.5));
        assertThat(30_000 * (shares[0] + shares[1])).isCloseTo(12_000, within(0.5));
    }

    /** 1 / sin θ: 90° 1.000, 75° 1.035, 60° 1.155, 45° 1.414, 30° 2.000 (29 CFR 1910.184, ASME B30.9). */
    @Test
    void slingFactorsAgreeWithThePublishedOnes() {
        Map.of(75.0, 1.035, 60.0, 1.155, 45.0, 1.414, 30.0, 2.0).forEach((angle, factor) -> {
            Sling sling = Sling.of(new FourPoints(-1, 1, -1, 1), 0, 0, Math.toRadians(angle), null);

            assertThat(sling.legN(0, 1) / sling.share(0)).as("at " + angle).isCloseTo(factor, within(5e-4));
        });
    }

    @Test
    void twoLegsAcrossCarryHalfEachOfACentralMass() {
        Sling sling = Sling.of(new FourPoints(-1, 1, -2, 2), 0, 0, Math.toRadians(60), null);

        assertThat(sling.points().shares(0, 0)).containsOnly(0.25);
        assertThat(List.of(sling.share(0), sling.share(1), sling.share(2), sling.share(3)))
                .containsOnly(0.5);
    }

    @Test
    void theFlattestLegHasThePlannedAngleAndAllMeetAtTheHook() {
        Sling sling = Sling.of(new FourPoints(0, 4, 0, 2), 1.5, 1.2, Math.toRadians(60), null);

        assertThat(Math.toDegrees(sling.leastAngle())).isCloseTo(60, within(1e-9));
        assertThat(Math.toDegrees(sling.angle(2))).isCloseTo(60, within(1e-9));
        assertThat(sling.angle(1)).isGreaterThan(sling.angle(2));
        for (int i = 0; i < 4; i++) {
            assertThat(sling.legLength(i) * Math.sin(sling.angle(i))).isCloseTo(sling.hookHeight(), within(1e-12));
        }
    }

    @Test
    void anEyeBearsItsLegAndSaysHowFarTheCentreMayGo() {
        Row row = rig(2000, 1500, 10_000.0).row(limit("lifting.eye"));

        double weight = 2000 * G * 1.25;
        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(Objects.requireNonNull(row.demand())).isGreaterThan(weight / 2000 / Math.sin(Math.toRadians(60)));
        assertThat(row.finding()).startsWith("The leg at ").contains("° above the level, and bears at most ");
        assertThat(row.mend())
                .isEqualTo("Take out mass, steeper legs, or eyes of at least "
                        + Math.round(1000 * Objects.requireNonNull(row.demand())) + " N.");
        Row strong = rig(2000, 1500, 20_000.0).row(limit("lifting.eye"));
        assertThat(strong.verdict()).isIn(Verdict.MET, Verdict.CLOSE);
        assertThat(strong.finding()).contains("with its centre of mass up to 500 mm off their middle; up to ");
    }

    @Test
    void equalLegsTiltABodyWhoseCentreIsOff() {
        Row row = rig(2000, 1000, 20_000.0).row(limit("lifting.tilt"));

        double hook = Math.hypot(2, 1) * Math.tan(Math.toRadians(60));
        double tilt = Math.toDegrees(Math.atan(1 / (hook + 2 - 0.5)));
        assertThat(Objects.requireNonNull(row.demand())).isCloseTo(tilt, within(1e-9));
        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding())
                .endsWith(" with its centre of mass up to 1000 mm off the middle of the eyes; allowed are 5°.");
    }

    @Test
    void shortLegsAreTooFlat() {
        Row row = rig(2000, 2000, 20_000.0).limit(Figure.SLING_LEG_LENGTH, 2500).row(limit("lifting.leg-angle"));

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(Objects.requireNonNull(row.capacity()))
                .isCloseTo(Math.toDegrees(Math.acos(Math.hypot(2, 1) / 2.5)), within(1e-9));
        assertThat(row.mend()).isEqualTo("Take longer sling legs.");
    }

    @Test
    void legsThatDoNotMeetAreTold() {
        Row row = rig(2000, 2000, 20_000.0).limit(Figure.SLING_LEG_LENGTH, 2000).row(limit("lifting.eye"));

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding()).isEqualTo("The sling legs are too short to meet above the body.");
    }

    @Test
    void withoutEyesOrRatingNothingIsAssessed() {
        Row noEyes = new Rig().cube("load", 2000, 1000, 500, 0).row(limit("lifting.eye"));
        Row noRating = rig(2000, 2000, null).row(limit("lifting.eye"));

        assertThat(noEyes.finding())
                .isEqualTo("The body Test body states no four lifting eyes at the corners of a level rectangle.");
        assertThat(noRating.finding()).isEqualTo("The rating of eye 1 is not stated.");
        assertThat(List.of(noEyes.verdict(), noRating.verdict())).containsOnly(Verdict.NOT_ASSESSED);
    }

    @ParameterizedTest
    @ValueSource(strings = {"river-post", "water-lab"})
    void everyRowOfTheSamplesIsAssessedAndHolds(String name) {
        Ledger ledger = Checker.standard()
                .check(LayoutFiles.read(Samples.layout(name).orElseThrow()).layout());

        assertThat(ledger.rows())
                .filteredOn(row -> row.subject() == Subject.LIFTING)
                .hasSize(LiftingLimits.all().size())
                .allMatch(row -> row.verdict() == Verdict.MET || row.verdict() == Verdict.CLOSE);
    }

    private static Limit limit(String id) {
        return LiftingLimits.all().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** A mass at (x, 1000, 500) mm under four eyes at the corners of 4 x 2 m, 2 m up. */
    private static Rig rig(double kg, int x, @Nullable Double ratingN) {
        Rig rig = new Rig()
                .limit(Figure.LIFT_DYNAMIC_FACTOR, 1.25)
                .limit(Figure.SLING_ANGLE, 60)
                .limit(Figure.SLING_LEAST_ANGLE, 45)
                .limit(Figure.LIFT_TILT, 5)
                .cube("load", kg, x - 500, 500, 0);
        int number = 1;
        for (int ex : new int[] {0, 4000}) {
            for (int ey : new int[] {0, 2000}) {
                rig.provision(
                        new Provision("eye " + number++, Provision.Use.LIFTING, Point.ofMm(ex, ey, 2000), ratingN));
            }
        }
        return rig;
    }
}
