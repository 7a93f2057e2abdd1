package org.shelterwright.layouts.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.rig.RandomRig;
import org.shelterwright.layouts.rig.Rig;
import org.shelterwright.layouts.rig.TestCarrier;
import org.shelterwright.layouts.scene.Scene;

class LoadStatesTest {
    private static final Quantity MASS = Quantity.ofBody(Influence.MASS);
    private static final Quantity MOMENT_X = Quantity.ofBody(Influence.MOMENT_X);

    /** Every state of a random rig, by its own plain sums, stays within what the search found; and some state reaches it. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void noStateIsWorseThanTheOneFound(long seed) {
        // given
        Scene scene = RandomRig.of(seed, 3).scene();
        LoadStates states = LoadStates.of(scene);
        VehicleLoads truck = VehicleLoads.carrier(scene).orElseThrow();
        Extreme rear = states.most(truck.axleLoad(1), truck.modes());
        Extreme front = states.least(truck.axleLoad(0), truck.modes());
        Extreme rearLeft = states.most(truck.wheelLoad(1, true), truck.modes());
        Extreme foremost = states.mostRatio(MOMENT_X, MASS, states.roadModes()).orElseThrow();
        Extreme leaning = states.mostRatio(truck.halfDifference(1), truck.axleLoad(1), truck.modes())
                .orElseThrow();
        Extreme high = states.mostRatio(truck.heightMoment(), truck.mass(), truck.modes())
                .orElseThrow();
        double[] seen = new double[6];
        Arrays.fill(seen, Double.NEGATIVE_INFINITY);
        seen[1] = Double.POSITIVE_INFINITY;
        // when
        Random random = new Random(seed);
        for (int i = 0; i < 4000; i++) {
            ToDoubleFunction<String> choice = BruteForce.drawn(random, i % 4 > 0);
            boolean road = random.nextBoolean();
            Plain plain =
                    new Plain(scene, road ? Situation.ON_THE_ROAD : Situation.ON_STATION, choice, random.nextBoolean());
            seen[0] = Math.max(seen[0], plain.axle(false));
            seen[1] = Math.min(seen[1], plain.axle(true));
            seen[2] = Math.max(seen[2], plain.axle(false) / 2 + plain.rearHalfDifference());
            seen[3] = road ? Math.max(seen[3], plain.centreX()) : seen[3];
            seen[4] = Math.max(seen[4], plain.rearHalfDifference() / plain.axle(false));
            seen[5] = Math.max(seen[5], plain.height());
        }
        // then
        String as = "seed " + seed;
        assertThat(seen[0]).as(as).isLessThanOrEqualTo(rear.worst() + 1e-9).isGreaterThan(rear.worst() * 0.9);
        assertThat(seen[1]).as(as).isGreaterThanOrEqualTo(front.worst() - 1e-9).isLessThan(front.worst() * 1.1);
        assertThat(seen[2]).as(as).isLessThanOrEqualTo(rearLeft.worst() + 1e-9).isGreaterThan(rearLeft.worst() * 0.9);
        assertThat(seen[3]).as(as).isLessThanOrEqualTo(foremost.worst() + 1e-9).isGreaterThan(foremost.worst() - 0.2);
        assertThat(seen[4]).as(as).isLessThanOrEqualTo(leaning.worst() + 1e-9).isGreaterThan(leaning.worst() - 0.05);
        assertThat(seen[5]).as(as).isLessThanOrEqualTo(high.worst() + 1e-9).isGreaterThan(high.worst() - 0.1);
    }

    /** Plain sums of one state, with moments about the rear axle instead of the front one. */
    private static final class Plain {
        private final BruteForce force;

        Plain(Scene scene, Situation situation, ToDoubleFunction<String> choice, boolean trailerOn) {
            force = new BruteForce(scene, situation, choice);
            double load = trailerOn ? BruteForce.sum(force.trailer, p -> p[0] * p[1]) / 3.0 : 0;
            force.truck.add(new double[] {load, -5.2, 0, 0.6});
        }

        double axle(boolean front) {
            double ofFront = BruteForce.sum(force.truck, p -> p[0] * (p[1] + 4.0)) / 4.0;
            return front ? ofFront : BruteForce.sum(force.truck, p -> p[0]) - ofFront;
        }

        double rearHalfDifference() {
            return BruteForce.sum(force.truck, p -> p[0] * (-p[1] / 4.0) * p[2] / 1.85);
        }

        double centreX() {
            return BruteForce.sum(force.body, p -> p[0] * p[1]) / BruteForce.sum(force.body, p -> p[0]);
        }

        double height() {
            return BruteForce.sum(force.truck, p -> p[0] * p[3]) / BruteForce.sum(force.truck, p -> p[0]);
        }
    }

    /** Few fills, no ranges: every vertex is listed, and the best of them is what the search finds, to the last digits. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15})
    void theBestVertexIsFoundExactly(long seed) {
        // given four tanks at random places
        Random random = new Random(seed);
        Rig rig = new Rig().tare(Rig.mass(700, 2000, 1000, 800));
        double[] full = new double[4];
        double[] least = new double[4];
        double[] x = new double[4];
        for (int i = 0; i < 4; i++) {
            least[i] = random.nextInt(20);
            full[i] = least[i] + random.nextInt(500);
            int at = random.nextInt(3000);
            x[i] = (at + 500) / 1000.0;
            Tank tank = new Tank("tank", Point.ofMm(500, 500, 500), least[i], full[i]);
            rig.put(
                    "t" + i,
                    Rig.item("t" + i, Size.ofMm(1000, 1000, 1000), Rig.mass(50, 500, 500, 500), tank),
                    Rig.at(at, 0, 0),
                    null);
        }
        LoadStates states = LoadStates.of(rig.scene());
        // when
        double most = 0;
        double leastX = 10;
        for (int bits = 0; bits < 16; bits++) {
            double mass = 700;
            double moment = 1400;
            for (int i = 0; i < 4; i++) {
                double kg = 50 + ((bits >> i & 1) == 1 ? full[i] : least[i]);
                mass += kg;
                moment += kg * x[i];
            }
            most = Math.max(most, moment / mass);
            leastX = Math.min(leastX, moment / mass);
        }
        // then
        assertThat(states.mostRatio(MOMENT_X, MASS, states.modes())
                        .orElseThrow()
                        .worst())
                .isCloseTo(most, within(1e-12));
        assertThat(states.leastRatio(MOMENT_X, MASS, states.modes())
                        .orElseThrow()
                        .worst())
                .isCloseTo(leastX, within(1e-12));
    }

    @Test
    void aRatioWhoseDenominatorMayBeZeroHasNoExtreme() {
        LoadStates states = LoadStates.of(new Rig().scene());

        assertThat(states.mostRatio(MOMENT_X, MASS, states.modes())).isEmpty();
    }

    @Test
    void theStateNamesWhatMattersInWords() {
        // given a tank at the front, one at the rear, a crew and a trailer
        Rig rig = new Rig()
                .carrier(TestCarrier.truck()
                        .tank("fuel tank", -1000, 0, 600, 0, 100)
                        .coupling(-5500, 500, 100.0, null, null)
                        .seat(500, 0, 1500)
                        .build())
                .trailer(TestCarrier.centreAxleTrailer().build())
                .crew(1)
                .load(
                        "box",
                        Rig.item("box", Size.ofMm(1000, 1000, 1000), Rig.mass(90, 500, 500, 500)),
                        Pose.at(Point.ofMm(500, -500, 500)));
        Scene scene = rig.scene();
        LoadStates states = LoadStates.of(scene);
        VehicleLoads truck = VehicleLoads.carrier(scene).orElseThrow();
        // when, then
        assertThat(states.most(truck.mass(), truck.modes()).state().text())
                .isEqualTo("on the road, fuel tank full, crew aboard, trailer on");
        assertThat(states.most(truck.axleLoad(0), truck.modes()).state().text())
                .isEqualTo("on the road, fuel tank full, crew aboard, trailer off");
        assertThat(states.least(truck.axleLoad(1), truck.modes()).state().text())
                .isEqualTo("on the road, fuel tank low, crew aboard, trailer off");
        assertThat(states.most(MASS, states.modes()).state().text()).isEqualTo("on the road");
    }

    @Test
    void onStationIsSearchedOnlyIfSomethingStandsElsewhereThere() {
        Rig still = new Rig().cube("box", 100, 0, 0, 0);
        Rig moving = new Rig()
                .put(
                        "box",
                        Rig.item("box", Size.ofMm(1000, 1000, 1000), Rig.mass(100, 500, 500, 500)),
                        Rig.at(3000, 0, 0),
                        Rig.at(0, 0, 0));

        assertThat(LoadStates.of(still.scene()).modes()).containsExactly(new Mode(Situation.ON_THE_ROAD, false));
        LoadStates states = LoadStates.of(moving.scene());
        assertThat(states.modes()).hasSize(2);
        assertThat(states.most(MOMENT_X, states.modes()).state().text()).isEqualTo("on station");
        assertThat(states.most(MOMENT_X, states.roadModes()).worst()).isEqualTo(50);
    }

    @Test
    void manyTanksAreNamedShortly() {
        List<Fill> tanks = List.of(tank("a"), tank("b"), tank("c"), tank("d"));
        Mode road = new Mode(Situation.ON_THE_ROAD, false);

        assertThat(new LoadState(road, false, tanks, List.of()).text()).isEqualTo("on the road, tanks full");
        assertThat(new LoadState(road, false, List.of(), tanks).text()).isEqualTo("on the road, tanks low");
        assertThat(new LoadState(road, false, tanks.subList(0, 1), tanks.subList(1, 4)).text())
                .isEqualTo("on the road, a full, other tanks low");
        assertThat(new LoadState(road, false, tanks.subList(0, 3), tanks.subList(3, 4)).text())
                .isEqualTo("on the road, d low, other tanks full");
        assertThat(new LoadState(road, false, tanks.subList(0, 1), tanks.subList(1, 3)).text())
                .isEqualTo("on the road, a full, b low, c low");
        List<Fill> many = List.of(tank("e"), tank("f"), tank("g"), tank("h"), Fill.CREW);
        assertThat(new LoadState(road, false, tanks, many).text())
                .isEqualTo("on the road, 4 tanks full, other tanks low, no crew");
        assertThat(new LoadState(road, true, List.of(), List.of(Fill.CREW)).text())
                .isEqualTo("on the road, no crew, trailer off");
        assertThat(Fill.tank("fuel", "Heater").name()).isEqualTo("fuel of Heater");
    }

    private static Fill tank(String name) {
        return new Fill(name, Fill.Kind.TANK);
    }
}
