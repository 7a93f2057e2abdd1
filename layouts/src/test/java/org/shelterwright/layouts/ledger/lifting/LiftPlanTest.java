package org.shelterwright.layouts.ledger.lifting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.rig.Rig;
import org.shelterwright.layouts.rules.Figure;

class LiftPlanTest {
    private static final double WEIGHT_N = 2000 * 9.80665 * 1.25;
    private static final FourPoints EYES = new FourPoints(0.5, 3.5, 0.2, 1.8);

    /** Eyes at 0.5 and 3.5 m along, 0.2 and 1.8 m across, 2 m high; 2 t with their centre at a place. */
    private static LiftPlan plan(double x, double y, @Nullable Double ratingN) {
        Rig rig = new Rig()
                .limit(Figure.LIFT_DYNAMIC_FACTOR, 1.25)
                .limit(Figure.SLING_ANGLE, 60)
                .cube("load", 2000, (int) Math.round(1000 * x) - 500, (int) Math.round(1000 * y) - 500, 0);
        int number = 1;
        for (int ex : new int[] {500, 3500}) {
            for (int ey : new int[] {200, 1800}) {
                rig.provision(
                        new Provision("eye " + number++, Provision.Use.LIFTING, Point.ofMm(ex, ey, 2000), ratingN));
            }
        }
        return LiftPlan.of(rig.scene()).orElseThrow();
    }

    @Test
    void eachLegBearsWhatTheSlingAboveTheCentreSays() {
        LiftPlan plan = plan(1.4, 1.2, 50_000.0);
        Sling sling = Sling.of(EYES, 1.4, 1.2, Math.toRadians(60), null);

        assertThat(plan.massKg()).isEqualTo(2000);
        assertThat(plan.hookHeight()).isCloseTo(sling.hookHeight(), within(1e-9));
        assertThat(plan.leastAngle()).isCloseTo(60, within(1e-9));
        assertThat(plan.offM()).isCloseTo(Math.hypot(0.6, 0.2), within(1e-9));
        for (int i = 0; i < 4; i++) {
            LiftPlan.Leg leg = plan.legs().get(i);
            assertThat(leg.forceN()).isCloseTo(sling.legN(i, WEIGHT_N), within(1e-6));
            assertThat(leg.share()).isCloseTo(sling.share(i), within(1e-12));
            assertThat(leg.lengthM()).isCloseTo(sling.legLength(i), within(1e-12));
            assertThat(leg.eye().name()).isEqualTo("eye " + (i + 1));
        }
    }

    /** Along the way out through the centre, the last place at which no eye is overloaded, found by small steps. */
    @Test
    void theCentreMayGoAsFarAsTheEyesBear() {
        for (double[] centre : new double[][] {{1.4, 1.2}, {2.6, 0.8}, {2.0, 1.3}, {2.7, 1.0}}) {
            double off = Math.hypot(centre[0] - 2, centre[1] - 1);
            double ux = (centre[0] - 2) / off;
            double uy = (centre[1] - 1) / off;
            double last = 0;
            for (double out = 0; EYES.holds(2 + ux * out, 1 + uy * out); out += 1e-4) {
                Sling sling = Sling.of(EYES, 2 + ux * out, 1 + uy * out, Math.toRadians(60), null);
                boolean held = true;
                for (int i = 0; i < 4; i++) {
                    held &= sling.legN(i, WEIGHT_N) <= 18_000;
                }
                if (!held) {
                    break;
                }
                last = out;
            }
            double allowed =
                    Objects.requireNonNull(plan(centre[0], centre[1], 18_000.0).allowedM());

            assertThat(last).isGreaterThan(0.05);
            assertThat(allowed).as("through %s, %s", centre[0], centre[1]).isCloseTo(last, within(2e-4));
        }
    }

    @Test
    void strongEyesLetTheCentreGoToTheirEdge() {
        assertThat(plan(2.5, 1.0, 1e9).allowedM()).isCloseTo(1.5, within(1e-6));
        assertThat(plan(2.0, 0.7, 1e9).allowedM()).isCloseTo(0.8, within(1e-6));
    }

    @Test
    void withoutARatingNothingIsAllowed() {
        assertThat(plan(1.4, 1.2, null).allowedM()).isNull();
    }
}
