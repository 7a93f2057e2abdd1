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

    /** A central mass on legs at 60°: 1.25 · 2000 · 9.80665 / 2 / sin 60° = 14 154.7 N in each leg (by hand). */
    @Test
    void anEyeHoldsOneNewtonAboveItsLegAndNotOneBelow() {
        Row above = rig(2000, 2000, 14_155.0).row(limit("lifting.eye"));
        Row below = rig(2000, 2000, 14_154.0).row(limit("lifting.eye"));

        assertThat(above.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(above.mend()).isNull();
        assertThat(below.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(below.finding())
                .startsWith("The leg at eye ")
                .endsWith(" pulls with 14155 N at 60° above the level, and bears at most 50 % of 2000 kg, even with its"
                        + " centre of mass in their middle.");
        assertThat(below.mend()).isEqualTo("Take out mass, steeper legs, or eyes of at least 14155 N.");
    }

    @Test
    void theWeakestEyeGovernsThoughItsLegPullsLess() {
        // given a centre nearer to the eyes 1 and 2, and an eye 4 of half their strength
        Row row = eyes(new Rig().cube("load", 2000, 1300, 500, 0), 20_000.0, 10_000.0)
                .row(limit("lifting.eye"));

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding()).startsWith("The leg at eye 4 pulls with ");
    }

    @Test
    void aCentreThatIsTooFarOffIsToldHowFarItMayGo() {
        Row row = rig(2000, 800, 16_000.0).row(limit("lifting.eye"));

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.mend())
                .matches("Bring the centre of mass within \\d+ mm of the middle of the eyes, or take steeper legs\\.");
        int allowedMm = Integer.parseInt(Objects.requireNonNull(row.mend()).replaceAll("\\D+", ""));
        assertThat(rig(2000, 2000 - allowedMm + 1, 16_000.0)
                        .row(limit("lifting.eye"))
                        .verdict())
                .isEqualTo(Verdict.CLOSE);
        assertThat(rig(2000, 2000 - allowedMm - 1, 16_000.0)
                        .row(limit("lifting.eye"))
                        .verdict())
                .isEqualTo(Verdict.BROKEN);
    }

    @Test
    void eyesAsHighAsTheCentreOfMassAreCloseAndOneMillimetreLowerIsBroken() {
        Row level = at(1500).row(limit("lifting.eyes-above"));
        Row below = at(1501).row(limit("lifting.eyes-above"));

        assertThat(level.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(level.mend()).isNull();
        assertThat(below.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(below.mend()).isEqualTo("Bring mass lower by at least 1 mm, or lift it by a frame.");
        assertThat(below.finding())
                .isEqualTo("The centre of mass lies up to 2001 mm above the floor, and the lifting eyes 2000 mm.");
    }

    private static Rig at(int z) {
        return eyes(new Rig().cube("load", 2000, 1500, 500, z), 50_000.0);
    }

    @Test
    void aBodyThatHangsNearlyLevelNeedsNoMend() {
        double hook = Math.hypot(2, 1) * Math.sqrt(3);
        double tilt = Math.toDegrees(Math.atan(0.4 / (hook + 2 - 0.5)));
        Row within =
                rig(2000, 1600, 20_000.0).limit(Figure.LIFT_TILT, tilt + 1e-6).row(limit("lifting.tilt"));
        Row over =
                rig(2000, 1600, 20_000.0).limit(Figure.LIFT_TILT, tilt - 1e-6).row(limit("lifting.tilt"));

        assertThat(within.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(within.mend()).isNull();
        assertThat(over.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(over.mend())
                .isEqualTo(
                        "Make the legs of unequal length, with the hook above the centre of mass, or move mass towards"
                                + " the middle of the eyes.");
    }

    /** 29 CFR 1910.184 and ASME B30.9: no leg below 30°. Legs of √5 / cos 30° reach eyes √5 m off at just that angle. */
    @Test
    void legsAtTheLeastAngleAreCloseAndShorterOnesAreBroken() {
        double lengthMm = 1000 * Math.sqrt(5) / Math.cos(Math.toRadians(30));
        Row longer = rig(2000, 2000, 1e6)
                .limit(Figure.SLING_LEAST_ANGLE, 30)
                .limit(Figure.SLING_LEG_LENGTH, lengthMm + 0.1)
                .row(limit("lifting.leg-angle"));
        Row shorter = rig(2000, 2000, 1e6)
                .limit(Figure.SLING_LEAST_ANGLE, 30)
                .limit(Figure.SLING_LEG_LENGTH, lengthMm - 0.1)
                .row(limit("lifting.leg-angle"));

        assertThat(longer.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(longer.mend()).isNull();
        assertThat(longer.finding())
                .isEqualTo("The flattest leg rises at 30°, with the hook 1291 mm above the eyes; needed are 30°.");
        assertThat(shorter.verdict()).isEqualTo(Verdict.BROKEN);
    }

    @Test
    void figuresThatAreNotSetAreNamed() {
        Row tilt = rig(2000, 2000, 1e6).without(Figure.LIFT_TILT).row(limit("lifting.tilt"));
        Row angle = rig(2000, 2000, 1e6).without(Figure.SLING_LEAST_ANGLE).row(limit("lifting.leg-angle"));
        Row factor = rig(2000, 2000, 1e6).without(Figure.LIFT_DYNAMIC_FACTOR).row(limit("lifting.eye"));
        Row massless = eyes(new Rig(), 1e6).row(limit("lifting.eye"));

        assertThat(List.of(tilt.verdict(), angle.verdict(), factor.verdict(), massless.verdict()))
                .containsOnly(Verdict.NOT_ASSESSED);
        assertThat(tilt.finding()).contains("(" + Figure.LIFT_TILT.id() + ")");
        assertThat(angle.finding()).contains("(" + Figure.SLING_LEAST_ANGLE.id() + ")");
        assertThat(factor.finding()).contains("(" + Figure.LIFT_DYNAMIC_FACTOR.id() + ")");
        assertThat(massless.finding()).isEqualTo("Body and units together have no mass, and so no centre.");
    }

    @Test
    void onlyTheHighestFourEyesInARectangleLift() {
        Rig withLow = rig(2000, 2000, 20_000.0)
                .provision(new Provision("low eye", Provision.Use.BOTH, Point.ofMm(2000, 0, 500), 1.0))
                .provision(new Provision("lashing", Provision.Use.TIE_DOWN, Point.ofMm(0, 0, 2000), 1.0));
        Rig askew = new Rig()
                .limit(Figure.LIFT_DYNAMIC_FACTOR, 1.25)
                .limit(Figure.SLING_ANGLE, 60)
                .cube("load", 2000, 1500, 500, 0);
        int number = 1;
        for (int[] at : new int[][] {{0, 0}, {0, 2000}, {4000, 0}, {4000, 1999}}) {
            askew.provision(
                    new Provision("eye " + number++, Provision.Use.LIFTING, Point.ofMm(at[0], at[1], 2000), 20_000.0));
        }

        assertThat(withLow.row(limit("lifting.eye")).verdict()).isEqualTo(Verdict.MET);
        assertThat(askew.row(limit("lifting.eye")).finding())
                .isEqualTo("The body Test body states no four lifting eyes at the corners of a level rectangle.");
    }

    /** Statics: four points bear nothing downward if the mass lies beside them. */
    @Test
    void aCentreOutsideTheEyesIsNotLiftedHoweverStrongTheyAre() {
        Row row = rig(2000, 4100, 900_000.0).row(limit("lifting.eye"));

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding())
                .isEqualTo(
                        "The centre of mass may lie outside the lifting eyes: no sling holds the body level by them.");
        assertThat(row.mend()).isEqualTo("Bring the centre of mass between the eyes, or lift the body by a frame.");
        assertThat(rig(2000, 3900, 900_000.0).row(limit("lifting.eye")).verdict())
                .isEqualTo(Verdict.MET);
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
        return eyes(rig, ratingN);
    }

    private static Rig eyes(Rig rig, @Nullable Double ratingN) {
        return eyes(rig, ratingN, ratingN);
    }

    /** The same with another rating of the eye at the far corner. */
    private static Rig eyes(Rig rig, @Nullable Double ratingN, @Nullable Double farN) {
        rig.limit(Figure.LIFT_DYNAMIC_FACTOR, 1.25).limit(Figure.SLING_ANGLE, 60);
        int number = 1;
        for (int ex : new int[] {0, 4000}) {
            for (int ey : new int[] {0, 2000}) {
                Double each = number == 4 ? farN : ratingN;
                rig.provision(new Provision("eye " + number++, Provision.Use.LIFTING, Point.ofMm(ex, ey, 2000), each));
            }
        }
        return rig;
    }
}
