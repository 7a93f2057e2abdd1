package org.shelterwright.layouts.ledger.lifting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.body.Provision.Use;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.rig.Rig;
import org.shelterwright.layouts.rules.Figure;

class StoodLimitsTest {
    private static final double WEIGHT_KN = 2000 * 9.80665 / 1000;

    /** Lever rule: a load at a third of the way between two supports rests with two thirds on the nearer one. */
    @Test
    void aForkPocketBearsItsShareByTheLeverRule() {
        Row row = forks(1500, 20_000.0).row(limit("lifting.fork-pocket"));

        assertThat(Objects.requireNonNull(row.demand())).isCloseTo(1.25 * WEIGHT_KN * 2 / 3, within(1e-6));
        assertThat(row.verdict()).isEqualTo(Verdict.MET);
        assertThat(row.finding())
                .isEqualTo(
                        "On forks rear pocket bears up to 66.7 % of 2000 kg; the truck must be rated for that mass at"
                                + " 1000 mm from the mouth of the pockets.");
    }

    @Test
    void aForkPocketThatIsTooWeakIsBroken() {
        Row row = forks(1500, 16_000.0).row(limit("lifting.fork-pocket"));

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.mend()).isEqualTo("Take out mass, or lift the body by its eyes.");
    }

    @Test
    void aCentreBeyondAForkIsBrokenHoweverStrongThePocketsAre() {
        Row row = forks(600, 1e9).row(limit("lifting.fork-pocket"));

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.mend()).isEqualTo("Bring the centre of mass between the forks, or lift the body by its eyes.");
    }

    @Test
    void pocketsThatAreNotPairsOrHaveNoRatingAreNotAssessed() {
        Row single = new Rig()
                .cube("load", 2000, 1000, 500, 0)
                .provision(new Provision("pocket", Use.FORK_POCKET, Point.ofMm(1000, 0, 0), 1.0))
                .row(limit("lifting.fork-pocket"));
        Row unrated = forks(1500, null).row(limit("lifting.fork-pocket"));

        assertThat(single.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(single.finding()).isEqualTo("1 fork pocket at y 0 mm: two, side by side, share a load.");
        assertThat(unrated.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(unrated.finding()).isEqualTo("The rating of rear pocket is not stated.");
    }

    @Test
    void withoutPocketsOrPadsThereIsNothingToHold() {
        Rig rig = new Rig().cube("load", 2000, 1000, 500, 0);

        assertThat(rig.row(limit("lifting.fork-pocket")).finding()).isEqualTo("The body has no fork pockets.");
        assertThat(rig.row(limit("lifting.stand")).finding()).isEqualTo("The body has no pads for stands.");
        assertThat(rig.row(limit("lifting.stand-base")).state()).isEqualTo("does not apply");
    }

    @Test
    void twoStandsAcrossBearAll() {
        Row row = stands(2000, 20_000.0).row(limit("lifting.stand"));

        assertThat(Objects.requireNonNull(row.demand())).isCloseTo(WEIGHT_KN / 2, within(1e-6));
        assertThat(row.verdict()).isEqualTo(Verdict.MET);
        assertThat(stands(2000, 9_000.0).row(limit("lifting.stand")).mend())
                .isEqualTo("Take stands rated for at least 9807 N, or fill the body on its carrier.");
    }

    @Test
    void theCentreStaysInsideTheBaseOfTheStandsByAMargin() {
        Row inside = stands(2000, 20_000.0).row(limit("lifting.stand-base"));
        Row outside = stands(200, 20_000.0).row(limit("lifting.stand-base"));

        assertThat(inside.finding())
                .isEqualTo("Off its carrier the centre of mass stays 1000 mm inside the base of the stands.");
        assertThat(inside.verdict()).isEqualTo(Verdict.MET);
        assertThat(outside.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(outside.mend())
                .isEqualTo("Move mass along the body by a moment of at least 100 kg·m towards its middle.");
    }

    /** Half of 1.25 · 2000 kg on each of two forks beside the centre, and one newton less than that (by hand). */
    @Test
    void aForkPocketAtItsRatingIsCloseAndOneNewtonBelowItIsBroken() {
        double halfN = 0.5 * (2000 * 9.80665 * 1.25);

        Row exact = forks(1750, halfN).row(limit("lifting.fork-pocket"));
        Row below = forks(1750, halfN - 1).row(limit("lifting.fork-pocket"));

        assertThat(exact.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(exact.mend()).isNull();
        assertThat(below.verdict()).isEqualTo(Verdict.BROKEN);
    }

    @Test
    void aCentreStraightOverAForkRestsOnItAndOneMillimetreBeyondTurnsTheBodyOff() {
        Row over = forks(1000, 1e9).row(limit("lifting.fork-pocket"));
        Row beyond = forks(999, 1e9).row(limit("lifting.fork-pocket"));
        Row beyondFront = forks(2501, 1e9).row(limit("lifting.fork-pocket"));

        assertThat(over.verdict()).isEqualTo(Verdict.MET);
        assertThat(over.finding()).startsWith("On forks rear pocket bears up to 100 % of 2000 kg");
        assertThat(beyond.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(beyondFront.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(beyondFront.finding()).startsWith("On forks front pocket bears up to 100.1 %");
    }

    @Test
    void theWeakerPocketGovernsThoughItBearsLess() {
        // given a third of the load, 8.172 kN, on a front pocket of 8 kN, and two thirds on a rear one of 20 kN
        Row row = loaded(1500)
                .provision(new Provision("rear pocket", Use.FORK_POCKET, Point.ofMm(1000, 0, 0), 20_000.0))
                .provision(new Provision("front pocket", Use.FORK_POCKET, Point.ofMm(2500, 0, 0), 8_000.0))
                .row(limit("lifting.fork-pocket"));

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding()).startsWith("On forks front pocket bears up to 33.3 % of 2000 kg");
        assertThat(row.capacity()).isEqualTo(8.0);
    }

    @Test
    void pocketsOfTheOtherSideAreJudgedFromTheirOwnMouth() {
        // given weaker pockets on the left, and the centre 700 mm from the right: 1300 mm from the left
        Row row = new Rig()
                .limit(Figure.LIFT_DYNAMIC_FACTOR, 1.25)
                .cube("load", 2000, 1250, 200, 0)
                .provision(new Provision("right rear", Use.FORK_POCKET, Point.ofMm(1000, 0, 0), 20_000.0))
                .provision(new Provision("right front", Use.FORK_POCKET, Point.ofMm(2500, 0, 0), 20_000.0))
                .provision(new Provision("left rear", Use.FORK_POCKET, Point.ofMm(1000, 2000, 0), 15_000.0))
                .provision(new Provision("left front", Use.FORK_POCKET, Point.ofMm(2500, 2000, 0), 15_000.0))
                .row(limit("lifting.fork-pocket"));

        assertThat(row.finding())
                .startsWith("On forks left rear bears up to 50 % ")
                .endsWith(" at 1300 mm from the mouth of the pockets.");
    }

    @Test
    void threePocketsOfOneSideAreNotAssessed() {
        Row row = forks(1500, 20_000.0)
                .provision(new Provision("third pocket", Use.FORK_POCKET, Point.ofMm(3000, 0, 0), 20_000.0))
                .row(limit("lifting.fork-pocket"));

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding()).isEqualTo("3 fork pockets at y 0 mm: two, side by side, share a load.");
        assertThat(row.mend()).isEqualTo("State two fork pockets for each side from which forks go in.");
    }

    /**
     * A centre a quarter in from one pad along and across: of four that pad bears 0.75 · 0.75, of two across 1 − (4·1 + 2·0.5)/20 =
     * 0.75 (by hand).
     */
    @Test
    void theStandNearestTheCentreBearsMost() {
        Row row = stands(new Rig().cube("load", 2000, 500, 0, 0), 20_000.0, 20_000.0)
                .row(limit("lifting.stand"));

        assertThat(Objects.requireNonNull(row.demand())).isCloseTo(0.75 * WEIGHT_KN, within(1e-6));
        assertThat(row.finding()).isEqualTo("Off its carrier the stand at pad 0 0 bears up to 75 % of 2000 kg.");
    }

    /** 9.807 kN on each: a stand of 10 kN is used to 98 % though one of 200 kN beside it has more to bear left. */
    @Test
    void theStandThatIsUsedMostGoverns() {
        Row row = stands(new Rig().cube("load", 2000, 1500, 500, 0), 200_000.0, 10_000.0)
                .row(limit("lifting.stand"));
        Row exact = stands(2000, 1000 * 9.80665).row(limit("lifting.stand"));
        Row below = stands(2000, 1000 * 9.80665 - 1).row(limit("lifting.stand"));

        assertThat(row.capacity()).isEqualTo(10.0);
        assertThat(row.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(row.finding()).startsWith("Off its carrier the stand at pad 4000 2000 ");
        assertThat(exact.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(exact.mend()).isNull();
        assertThat(below.verdict()).isEqualTo(Verdict.BROKEN);
    }

    /** By hand: 9.2 kN of 10 kN at the near pad leave 0.8 kN; across, 0.5 kN of 1.2 kN leave less, but are used less. */
    @Test
    void aStandWithLittleRoomButLittleUseDoesNotHideOneThatIsClose() {
        // given 9.80665 kN at a twentieth of the diagonal from the near pad
        Row row = stands(new Rig().cube("load", 1000, -300, -400, 0), 10_000.0, 1_100.0)
                .row(limit("lifting.stand"));

        assertThat(Objects.requireNonNull(row.demand())).isCloseTo(0.95 * 9.80665, within(1e-6));
        assertThat(row.finding()).startsWith("Off its carrier the stand at pad 0 0 ");
        assertThat(row.verdict()).isEqualTo(Verdict.CLOSE);
    }

    @Test
    void standsThatAreNotKnownAreNotAssessed() {
        Row unrated = stands(2000, null).row(limit("lifting.stand"));
        Rig three = loaded(2000);
        for (int x : new int[] {0, 2000, 4000}) {
            three.provision(new Provision("pad " + x, Use.STAND, Point.ofMm(x, 0, 0), 1.0));
        }
        Row noMargin = stands(2000, 20_000.0).without(Figure.STAND_MARGIN).row(limit("lifting.stand-base"));
        Row noMass = stands(new Rig(), 20_000.0, 20_000.0).row(limit("lifting.stand"));

        assertThat(unrated.finding()).isEqualTo("The rating of pad 0 0 is not stated.");
        assertThat(three.row(limit("lifting.stand")).finding())
                .isEqualTo("The pads for stands are not four at the corners of a level rectangle.");
        assertThat(three.row(limit("lifting.stand-base")).finding())
                .isEqualTo("The pads for stands are not four at the corners of a level rectangle.");
        assertThat(noMargin.finding()).startsWith("No value is set for ").contains(Figure.STAND_MARGIN.id());
        assertThat(noMass.finding()).isEqualTo("Body and units together have no mass, and so no centre.");
        assertThat(List.of(unrated.verdict(), noMargin.verdict(), noMass.verdict()))
                .containsOnly(Verdict.NOT_ASSESSED);
    }

    @Test
    void aCentreExactlyAtTheMarginIsCloseAndOneMillimetreFartherOutIsBroken() {
        Row exact = stands(250, 20_000.0).row(limit("lifting.stand-base"));
        Row below = stands(249, 20_000.0).row(limit("lifting.stand-base"));
        Row front = stands(3751, 20_000.0).row(limit("lifting.stand-base"));

        assertThat(exact.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(exact.mend()).isNull();
        assertThat(below.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(front.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(front.finding())
                .isEqualTo("Off its carrier the centre of mass stays 249 mm inside the base of the stands.");
    }

    @Test
    void aCentreOutsideTheStandsTipsTheBody() {
        Row along = stands(-100, 20_000.0).row(limit("lifting.stand-base"));
        Row across = stands(new Rig().limit(Figure.STAND_MARGIN, 250).cube("load", 2000, 1500, 1600, 0), 1e6, 1e6)
                .row(limit("lifting.stand-base"));

        assertThat(along.finding())
                .isEqualTo(
                        "Off its carrier the centre of mass lies up to 100 mm outside the base of the stands: the body"
                                + " tips.");
        assertThat(along.mend())
                .isEqualTo("Move mass along the body by a moment of at least 700 kg·m towards its middle.");
        assertThat(across.finding()).contains(" 100 mm outside the base ");
        assertThat(across.mend())
                .isEqualTo("Move mass across the body by a moment of at least 700 kg·m towards its middle.");
    }

    private static Limit limit(String id) {
        return LiftingLimits.all().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** A mass of 2 000 kg at (x, 1000, 500) mm. */
    private static Rig loaded(int x) {
        return new Rig()
                .limit(Figure.LIFT_DYNAMIC_FACTOR, 1.25)
                .limit(Figure.STAND_MARGIN, 250)
                .cube("load", 2000, x - 500, 500, 0);
    }

    /** Over pockets at x 1 000 and 2 500 mm that open at y 0. */
    private static Rig forks(int x, @Nullable Double ratingN) {
        return loaded(x)
                .provision(new Provision("rear pocket", Use.FORK_POCKET, Point.ofMm(1000, 0, 0), ratingN))
                .provision(new Provision("front pocket", Use.FORK_POCKET, Point.ofMm(2500, 0, 0), ratingN));
    }

    /** On stands at the corners of 4 x 2 m. */
    private static Rig stands(int x, @Nullable Double ratingN) {
        return stands(loaded(x), ratingN, ratingN);
    }

    /** The same with another rating at the far corner. */
    private static Rig stands(Rig rig, @Nullable Double ratingN, @Nullable Double farN) {
        for (int sx : new int[] {0, 4000}) {
            for (int sy : new int[] {0, 2000}) {
                boolean far = sx == 4000 && sy == 2000;
                rig.provision(
                        new Provision("pad " + sx + " " + sy, Use.STAND, Point.ofMm(sx, sy, 0), far ? farN : ratingN));
            }
        }
        return rig;
    }
}
