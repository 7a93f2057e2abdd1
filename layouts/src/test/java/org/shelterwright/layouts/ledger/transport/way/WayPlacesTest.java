package org.shelterwright.layouts.ledger.transport.way;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.body.Provision.Use;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.catalog.transit.Underside;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.transport.Gravity;
import org.shelterwright.layouts.transport.Crate;
import org.shelterwright.layouts.transport.Mode;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.Restriction;
import org.shelterwright.layouts.transport.Restriction.Asked;
import org.shelterwright.layouts.transport.TransportRig;

/** Bridges and narrow places, and lifting points, of a crate on the long flat wagon: tare 24.5 t, deck 2740 mm wide. */
class WayPlacesTest {
    /** Two lifting eyes share 1 t with a jerk of 1.3, 6 374.3 N each, on legs at 60°: 1.155 of that (29 CFR 1910.184, ASME B30.9). */
    private static final double HALF_N = 1000 * Gravity.STANDARD * 1.3 / 2 / Math.sin(Math.toRadians(60));

    private static Piece lifted(@Nullable Double massKg, Use use, Double... ratings) {
        List<Provision> eyes = new ArrayList<>();
        for (Double rating : ratings) {
            eyes.add(new Provision("eye " + (eyes.size() + 1), use, Point.ofMm(0, 100 * eyes.size(), 1000), rating));
        }
        return Piece.ofCrate(
                "a",
                "Crate a",
                new Crate(
                        Size.ofMm(2000, 1000, 1000),
                        massKg,
                        null,
                        Point.ofMm(1000, 500, 500),
                        Underside.SAWN_TIMBER,
                        null,
                        null,
                        false,
                        eyes));
    }

    private static Row lift(Piece piece) {
        return new TransportRig().piece(piece, 0, 0, 0).lifting("a").row("lifted");
    }

    @Test
    void theWeakestOfTheLiftingEyesCounts() {
        assertThat(lift(lifted(1000.0, Use.LIFTING, HALF_N + 0.01, 9_000.0)).verdict())
                .isEqualTo(Verdict.CLOSE);
        assertThat(lift(lifted(1000.0, Use.BOTH, 9_000.0, HALF_N - 1)).verdict())
                .isEqualTo(Verdict.BROKEN);
        assertThat(lift(lifted(1000.0, Use.LIFTING, 9_000.0, 8_000.0)).demand()).isCloseTo(HALF_N / 1000, within(1e-9));
        assertThat(lift(lifted(1000.0, Use.LIFTING, 9_000.0, 8_000.0)).finding())
                .isEqualTo(
                        "Two eyes of Crate a bear its weight with a jerk of 1.3, on legs at 60° above the level. With its"
                                + " centre off their middle one bears more.");
    }

    @Test
    void padsPocketsAndLashingEyesDoNotLift() {
        for (Use use : List.of(Use.TIE_DOWN, Use.FORK_POCKET, Use.STAND)) {
            assertThat(lift(lifted(1000.0, use, 9_000.0, 9_000.0)).verdict())
                    .as(use.name())
                    .isEqualTo(Verdict.NOT_ASSESSED);
        }
        assertThat(lift(lifted(1000.0, Use.LIFTING, 9_000.0)).finding())
                .isEqualTo(
                        "Crate a states no lifting eyes. Lift it on forks or in a net by the carrier's rules, or give"
                                + " its eyes.");
        assertThat(lift(lifted(null, Use.LIFTING, 9_000.0, 9_000.0)).finding()).contains(" and no mass");
        assertThat(lift(lifted(1000.0, Use.LIFTING, 9_000.0, null)).finding())
                .isEqualTo("The eye \"eye 2\" of Crate a states no rating.");
    }

    /** ISO 668:2013: a 1CC container is rated 30 480 kg (seen); with a tare of 2 300 kg it takes 28 180 kg. */
    @Test
    void aContainerIsLiftedUpToItsRating() {
        assertThat(container(28_180).verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(container(28_181).verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(container(28_180).finding())
                .isEqualTo("Car weighs up to 30480 kg of the 30480 kg that its corner fittings are made for.");
        assertThat(new TransportRig()
                        .crate("a", 0, 0, 0, 1000, 1000, 1000, 100.0)
                        .lifting("car")
                        .row("lifted")
                        .verdict())
                .as("a wagon")
                .isEqualTo(Verdict.NOT_ASSESSED);
    }

    private static Row container(double kg) {
        return new TransportRig()
                .on("container-1cc")
                .by(Mode.ROAD, "road-eu", "stowage-ctu")
                .crate("a", 0, 165, 0, 5_800, 2_000, 1_000, kg)
                .lifting("car")
                .row("lifted");
    }

    private static Row past(Asked asked, double limit, int dy) {
        boolean mass = asked == Asked.GROSS || asked == Asked.AXLE;
        Restriction place = new Restriction(
                "Sill bridge",
                List.of(asked),
                asked == Asked.GROSS ? limit : null,
                asked == Asked.AXLE ? limit : null,
                asked == Asked.HEIGHT ? (int) Math.round(1000 * limit) : null,
                asked == Asked.WIDTH ? (int) Math.round(1000 * limit) : null,
                mass ? "keeper of the bridge" : null);
        return new TransportRig()
                .crate("a", 5_250, 370, 0, 8_000, dy, 1_000, 24_500.0)
                .past(place)
                .row("restriction");
    }

    @Test
    void whatGoesOverABridgeIsHeldToWhatItTakes() {
        Row exact = past(Asked.GROSS, 49_000, 2_000);
        Row less = past(Asked.GROSS, 48_999, 2_000);

        assertThat(exact.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(exact.mend()).isNull();
        assertThat(exact.source().document()).isEqualTo("keeper of the bridge");
        assertThat(less.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(less.finding()).isEqualTo("Car at Sill bridge: gross 49000 of 48999 kg.");
        assertThat(less.mend()).isEqualTo("Go another way, or make it lighter or smaller.");
        assertThat(past(Asked.AXLE, 12_250, 2_000).demand()).as("on four axles").isCloseTo(12_250, within(1e-6));
    }

    @Test
    void heightAndWidthAreThoseOfCarAndLoad() {
        // The load stands 1230 mm up on the deck and is 1 m high.
        assertThat(past(Asked.HEIGHT, 2_230, 2_000).verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(past(Asked.HEIGHT, 2_229, 2_000).verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(past(Asked.HEIGHT, 2_229, 2_000).unit()).isEqualTo("mm");
        assertThat(past(Asked.WIDTH, 2_740, 2_000).demand())
                .as("the deck is wider")
                .isEqualTo(2_740.0);
        assertThat(past(Asked.WIDTH, 3_000, 2_900).demand())
                .as("from the right edge of the deck to the left side of the load, 370 + 2900 mm")
                .isEqualTo(3_270.0);
    }

    @Test
    void whatIsNotKnownAtABridgeIsNamed() {
        Restriction unknown = new Restriction("Sill bridge", List.of(Asked.WIDTH), null, null, null, null, null);
        Row limit = new TransportRig()
                .crate("a", 0, 0, 0, 1000, 1000, 1000, 100.0)
                .past(unknown)
                .row("restriction");
        Row mass = new TransportRig()
                .crate("a", 0, 0, 0, 1000, 1000, 1000, null)
                .past(new Restriction("Sill bridge", List.of(Asked.GROSS), 40_000.0, null, null, null, null))
                .row("restriction");

        assertThat(limit.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(limit.finding())
                .isEqualTo("The width that Sill bridge takes is not known. Ask its keeper, and give it in the"
                        + " restrictions of leg leg.");
        assertThat(mass.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(mass.finding()).isEqualTo("The gross of Car cannot be told.");
        assertThat(new TransportRig()
                        .crate("a", 0, 0, 0, 1000, 1000, 1000, 100.0)
                        .row("restriction")
                        .doesNotApply())
                .isTrue();
    }
}
