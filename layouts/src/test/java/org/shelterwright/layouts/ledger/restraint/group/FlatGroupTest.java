package org.shelterwright.layouts.ledger.restraint.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FlatGroupTest {
    private static final int GROUPS = 1_000;

    /** Shigley's Mechanical Engineering Design, 9th ed., example 8-7: four M16 at (±75, ±60) mm, 16 kN at 425 mm. */
    @Test
    void sharesAnEccentricShearAsThePublishedExampleDoes() {
        FlatGroup group = new FlatGroup(
                List.of(Bolt.at(0.075, 0.06), Bolt.at(0.075, -0.06), Bolt.at(-0.075, -0.06), Bolt.at(-0.075, 0.06)),
                List.of());

        GroupForces forces = group.under(new Force(0, -16_000, 0, 0.425, 0, 0));

        assertThat(forces.shearN(0)).isCloseTo(21_000, within(50.0));
        assertThat(forces.shearN(1)).isCloseTo(21_000, within(50.0));
        assertThat(forces.shearN(2)).isCloseTo(14_800, within(50.0));
        assertThat(forces.shearN(3)).isCloseTo(14_800, within(50.0));
        assertThat(forces.pullN()).containsOnly(0);
    }

    /** Khurmi and Gupta, Machine Design, crane bracket (from memory): 12 kN at 400 mm, bolts 50 and 375 mm from the edge. */
    @Test
    void turnsABracketAboutItsEdgeAsThePublishedExampleDoes() {
        FlatGroup group = new FlatGroup(
                List.of(Bolt.at(0.1, 0.05), Bolt.at(0.3, 0.05), Bolt.at(0.1, 0.375), Bolt.at(0.3, 0.375)),
                List.of(new Spot(0, 0), new Spot(0.4, 0), new Spot(0.4, 0.45), new Spot(0, 0.45)));

        GroupForces forces = group.under(new Force(0, -12_000, 0, 0.2, 0.2, 0.4));

        assertThat(forces.pullN()[2]).isCloseTo(6_290, within(5.0));
        assertThat(forces.pullN()[3]).isCloseTo(6_290, within(5.0));
        assertThat(forces.pullN()[0]).isCloseTo(6_288 * 50.0 / 375, within(1.0));
        assertThat(forces.shearN(2)).isCloseTo(3_000, within(1e-6));
        double pull = forces.pullN()[2];
        double shear = forces.shearN(2);
        assertThat(0.5 * (pull + Math.sqrt(pull * pull + 4 * shear * shear))).isCloseTo(7_490, within(5.0));
    }

    @Test
    void aLoadThatPressesInsideItsFootprintPullsOnNoBolt() {
        FlatGroup group = new FlatGroup(corners(0.1, 0.9), square());

        GroupForces forces = group.under(new Force(300, 0, -1000, 0.5, 0.5, 1));

        assertThat(forces.pullN()).containsOnly(0);
        assertThat(forces.shearN(0)).isCloseTo(75, within(1e-9));
    }

    @Test
    void aLoadThatPressesOnTheVeryEdgeIsHeldWithoutPull() {
        FlatGroup group = new FlatGroup(corners(0.1, 0.9), square());
        for (int i = 1; i < 100; i++) {
            double force = 10 * Math.PI * i;

            GroupForces forces = group.under(new Force(force, 0, -force, 0.7, i * 0.01, 0.3));

            assertThat(forces.held()).as("place " + i).isTrue();
            assertThat(Arrays.stream(forces.pullN()).sum()).as("place " + i).isCloseTo(0, within(1e-8 * force));
        }
    }

    @Test
    void aLoadThatHangsIsSharedEvenlyByEqualBolts() {
        FlatGroup group = new FlatGroup(corners(0.1, 0.9), square());

        GroupForces forces = group.under(new Force(0, 0, 400, 0.5, 0.5, 0.2));

        assertThat(forces.pullN()).containsOnly(new double[] {100, 100, 100, 100}, within(1e-9));
        assertThat(forces.pressN()).containsOnly(0);
    }

    @Test
    void pushedAcrossACornerItTurnsAboutThatCorner() {
        FlatGroup group = new FlatGroup(corners(0.1, 0.9), square());

        GroupForces forces = group.under(new Force(1000, 1000, -100, 0.5, 0.5, 1));

        assertThat(forces.held()).isTrue();
        assertThat(forces.pullN()[0]).isGreaterThan(forces.pullN()[1]).isGreaterThan(0);
        assertThat(forces.pullN()[1]).isCloseTo(forces.pullN()[3], within(1e-9));
        assertThat(Arrays.stream(forces.pressN()).filter(n -> n > 0).count()).isEqualTo(1);
    }

    @Test
    void slotsBearNoShearAlongThem() {
        FlatGroup group =
                new FlatGroup(List.of(Bolt.at(0, 0), new Bolt(1, 0, 1, 0, 1), new Bolt(2, 0, 1, 0, 1)), List.of());

        GroupForces forces = group.under(new Force(900, 600, 0, 1, 0, 0));

        assertThat(forces.shearS()).containsExactly(new double[] {900, 0, 0}, within(1e-9));
        assertThat(forces.shearT()).containsExactly(new double[] {200, 200, 200}, within(1e-9));
    }

    @Test
    void whatNothingBalancesIsNotHeld() {
        FlatGroup oneBolt = new FlatGroup(List.of(Bolt.at(0.5, 0.5)), square());
        FlatGroup allSlotted = new FlatGroup(List.of(new Bolt(0, 0, 1, 0, 1), new Bolt(1, 0, 1, 0, 1)), square());
        FlatGroup hinge = new FlatGroup(List.of(Bolt.at(0, 0), Bolt.at(1, 0)), List.of());

        assertThat(oneBolt.under(new Force(100, 0, -10, 0.5, 0.2, 0)).held()).isFalse();
        assertThat(allSlotted.under(new Force(100, 0, -10, 0.5, 0.5, 0)).held()).isFalse();
        assertThat(hinge.under(new Force(0, 100, 0, 0.5, 0, 0.5)).held()).isFalse();
    }

    @Test
    void agreesWithTryingEveryStateOnRandomGroups() {
        int pulled = 0;
        int unheld = 0;
        for (long seed = 0; seed < GROUPS; seed++) {
            RandomGroup random = RandomGroup.of(seed);
            FlatGroup group = random.group();
            GroupForces fast = group.under(random.force());
            Optional<double[]> slow = EveryState.pulls(random.bolts(), group.contact(), random.force());
            if (slow.isPresent() && (fast.held() || random.bolts().size() > 1)) {
                assertThat(fast.held()).as("seed " + seed).isTrue();
                assertThat(fast.pullN()).as("seed " + seed).containsExactly(slow.get(), within(1e-5));
                pulled += Arrays.stream(fast.pullN()).sum() > 0 ? 1 : 0;
            } else if (slow.isEmpty()) {
                assertThat(fast.held()).as("seed " + seed).isFalse();
                unheld++;
            }
        }
        assertThat(pulled).isGreaterThan(GROUPS / 3);
        assertThat(unheld).isGreaterThan(10);
    }

    @Test
    void balancesEveryLoadThatItHolds() {
        for (long seed = 0; seed < GROUPS; seed++) {
            RandomGroup random = RandomGroup.of(seed);
            FlatGroup group = random.group();
            GroupForces forces = group.under(random.force());
            if (forces.held()) {
                assertThat(imbalance(random, group, forces)).as("seed " + seed).isLessThan(1e-9);
            }
        }
    }

    @Test
    void aMirroredGroupHasMirroredForces() {
        for (long seed = 0; seed < GROUPS; seed++) {
            RandomGroup random = RandomGroup.of(seed);
            Force f = random.force();
            FlatGroup mirrored = new FlatGroup(
                    random.bolts().stream()
                            .map(b -> new Bolt(-b.s(), b.t(), b.pullStiffness(), 1, 1))
                            .toList(),
                    random.contact().stream().map(c -> new Spot(-c.s(), c.t())).toList());

            GroupForces one = random.group().under(f);
            GroupForces other = mirrored.under(new Force(-f.alongS(), f.alongT(), f.off(), -f.s(), f.t(), f.height()));

            same(seed, one, other);
        }
    }

    @Test
    void turningGroupAndLoadTogetherChangesNothing() {
        for (long seed = 0; seed < GROUPS; seed++) {
            RandomGroup random = RandomGroup.of(seed);
            Force f = random.force();
            double angle = new Random(seed).nextDouble() * 7;
            double c = Math.cos(angle);
            double d = Math.sin(angle);
            FlatGroup turned = new FlatGroup(
                    random.bolts().stream()
                            .map(b -> new Bolt(c * b.s() - d * b.t(), d * b.s() + c * b.t(), b.pullStiffness(), 1, 1))
                            .toList(),
                    random.contact().stream()
                            .map(p -> new Spot(c * p.s() - d * p.t(), d * p.s() + c * p.t()))
                            .toList());

            GroupForces one = random.group().under(f);
            GroupForces other = turned.under(new Force(
                    c * f.alongS() - d * f.alongT(),
                    d * f.alongS() + c * f.alongT(),
                    f.off(),
                    c * f.s() - d * f.t(),
                    d * f.s() + c * f.t(),
                    f.height()));

            same(seed, one, other);
        }
    }

    /**
     * Among all pulls that balance the load, those that come about have the least ΣT² (equal bolts: least complementary energy).
     * Another bolt only adds ways to balance it, so ΣT² never rises; a single pull may, by no more than that allows.
     */
    @Test
    void anotherBoltNeverRaisesTheLargestPullBeyondTheTheory() {
        for (long seed = 0; seed < GROUPS; seed++) {
            RandomGroup random = RandomGroup.of(seed);
            List<Bolt> equal = random.bolts().stream()
                    .map(bolt -> Bolt.at(bolt.s(), bolt.t()))
                    .toList();
            Random place = new Random(~seed);
            List<Bolt> more = new ArrayList<>(equal);
            more.add(Bolt.at(place.nextDouble(), place.nextDouble()));
            GroupForces before = new FlatGroup(equal, random.contact()).under(random.force());
            GroupForces after = new FlatGroup(more, random.contact()).under(random.force());
            if (before.held()) {
                assertThat(after.held()).as("seed " + seed).isTrue();
                assertThat(squares(after)).as("seed " + seed).isLessThanOrEqualTo(squares(before) * (1 + 1e-9) + 1e-9);
            }
        }
    }

    private static double squares(GroupForces forces) {
        return Arrays.stream(forces.pullN()).map(n -> n * n).sum();
    }

    private static void same(long seed, GroupForces one, GroupForces other) {
        assertThat(other.held()).as("seed " + seed).isEqualTo(one.held());
        if (one.held()) {
            assertThat(other.pullN()).as("seed " + seed).containsExactly(one.pullN(), within(1e-5));
            for (int i = 0; i < one.pullN().length; i++) {
                assertThat(other.shearN(i)).as("seed " + seed).isCloseTo(one.shearN(i), within(1e-6));
            }
        }
    }

    /** The largest of six sums of force and moment, as a share of the load. */
    private static double imbalance(RandomGroup random, FlatGroup group, GroupForces forces) {
        Force f = random.force();
        double[] sums = {
            f.alongS(), f.alongT(), f.off(), f.pullMomentS(), f.pullMomentT(), f.s() * f.alongT() - f.t() * f.alongS()
        };
        for (int i = 0; i < random.bolts().size(); i++) {
            Bolt bolt = random.bolts().get(i);
            sums[0] -= forces.shearS()[i];
            sums[1] -= forces.shearT()[i];
            sums[2] -= forces.pullN()[i];
            sums[3] -= forces.pullN()[i] * bolt.s();
            sums[4] -= forces.pullN()[i] * bolt.t();
            sums[5] -= bolt.s() * forces.shearT()[i] - bolt.t() * forces.shearS()[i];
        }
        for (int j = 0; j < group.contact().size(); j++) {
            Spot spot = group.contact().get(j);
            sums[2] += forces.pressN()[j];
            sums[3] += forces.pressN()[j] * spot.s();
            sums[4] += forces.pressN()[j] * spot.t();
        }
        double worst = 0;
        for (double sum : sums) {
            worst = Math.max(worst, Math.abs(sum));
        }
        for (int i = 0; i < forces.pullN().length; i++) {
            worst = Math.max(worst, -forces.pullN()[i]);
        }
        return worst / Math.max(1, f.size(1));
    }

    private static List<Bolt> corners(double low, double high) {
        return List.of(Bolt.at(low, low), Bolt.at(high, low), Bolt.at(high, high), Bolt.at(low, high));
    }

    private static List<Spot> square() {
        return List.of(new Spot(0, 0), new Spot(1, 0), new Spot(1, 1), new Spot(0, 1));
    }
}
