package org.shelterwright.layouts.ledger.lifting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
        assertThat(single.finding()).isEqualTo("1 fork pockets open at y 0 mm; two share a load.");
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
        Rig rig = loaded(x);
        for (int sx : new int[] {0, 4000}) {
            for (int sy : new int[] {0, 2000}) {
                rig.provision(new Provision("pad " + sx + " " + sy, Use.STAND, Point.ofMm(sx, sy, 0), ratingN));
            }
        }
        return rig;
    }
}
