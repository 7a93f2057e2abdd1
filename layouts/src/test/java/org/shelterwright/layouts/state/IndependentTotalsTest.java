package org.shelterwright.layouts.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.rig.RandomRig;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.statement.MassStatement;
import org.shelterwright.layouts.statement.StateTotal;

/**
 * A second calculation of totals, centre of mass and axle loads of random layouts, on another way: mass points listed one by one,
 * the axle loads from moments about the point 10 m before the front axle, the centre from moments about the front wall.
 */
class IndependentTotalsTest {
    private static final Offset<Double> CLOSE = within(1e-6);

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25, 26, 27, 28, 29, 30})
    void bothCalculationsAgree(long seed) {
        Scene scene = RandomRig.of(seed, 12).scene();
        for (StateTotal total : MassStatement.of(scene).states()) {
            String as = "seed " + seed + ", " + total.what() + " " + total.state();
            boolean full = total.state().contains("tanks full");
            Situation situation =
                    total.state().startsWith("on the road") ? Situation.ON_THE_ROAD : Situation.ON_STATION;
            BruteForce force = new BruteForce(scene, situation, middle(full));
            if (total.what().equals("Filled body")) {
                centre(total, force.body, 0, as);
            } else if (total.what().equals("Truck")) {
                double onCoupling = total.state().contains("trailer on") ? coupling(force) : 0;
                force.truck.add(new double[] {onCoupling, -5.2, 0, 0.6});
                truck(total, force.truck, as);
                centre(
                        total,
                        force.truck,
                        scene.carrier().orElseThrow().bodyAt().x() / 1e6,
                        as);
            } else {
                double mass = BruteForce.sum(force.trailer, p -> p[0]);
                assertThat(total.massKg()).as(as).isCloseTo(mass, CLOSE);
                assertThat(total.axles().get(0).loadKg()).as(as).isCloseTo(mass - coupling(force), CLOSE);
            }
        }
    }

    /** Moments about the trailer's axle, 3 m behind the coupling. */
    private static double coupling(BruteForce force) {
        return BruteForce.sum(force.trailer, p -> p[0] * p[1]) / 3;
    }

    private static void truck(StateTotal total, List<double[]> points, String as) {
        double mass = BruteForce.sum(points, p -> p[0]);
        double about = BruteForce.sum(points, p -> p[0] * (10 - p[1]));
        double rear = (about - 10 * mass) / 4;
        assertThat(total.axles().get(1).loadKg()).as(as).isCloseTo(rear, CLOSE);
        assertThat(total.axles().get(0).loadKg()).as(as).isCloseTo(mass - rear, CLOSE);
        double sideways = BruteForce.sum(points, p -> p[0] * p[2]);
        double taken = (total.axles().get(0).leftKg() - total.axles().get(0).rightKg()) * 2.0 / 2
                + (total.axles().get(1).leftKg() - total.axles().get(1).rightKg()) * 1.85 / 2;
        assertThat(taken).as(as).isCloseTo(sideways, CLOSE);
    }

    private static void centre(StateTotal total, List<double[]> points, double datum, String as) {
        double mass = BruteForce.sum(points, p -> p[0]);
        double fromFront = BruteForce.sum(points, p -> p[0] * (4 - (p[1] - datum))) / mass;
        double height = BruteForce.sum(points, p -> p[0] * p[3]) / mass;
        assertThat(total.massKg()).as(as).isCloseTo(mass, CLOSE);
        assertThat(total.xMm()).as(as).isCloseTo(1000 * (4 - fromFront), CLOSE);
        assertThat(total.zMm()).as(as).isCloseTo(1000 * (height - (datum == 0 ? 0 : 1.2)), CLOSE);
    }

    /** Masses and centres in the middle of their ranges; fills full or low. */
    private static ToDoubleFunction<String> middle(boolean full) {
        return name -> name.matches(".*/(mass|x|y|z)") ? 0.5 : full ? 1 : 0;
    }
}
