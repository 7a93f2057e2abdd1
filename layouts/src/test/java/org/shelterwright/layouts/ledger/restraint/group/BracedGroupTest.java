package org.shelterwright.layouts.ledger.restraint.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class BracedGroupTest {
    private static SpaceBolt floor(double x, double y) {
        return new SpaceBolt(x, y, 0, 2, -1, SpaceBolt.ROUND, false);
    }

    private static SpaceBolt wall(double y, double z) {
        return new SpaceBolt(0, y, z, 0, -1, SpaceBolt.ROUND, true);
    }

    private static final List<SpaceBolt> FEET = List.of(floor(0, 0), floor(0.5, 0), floor(0.5, 0.6), floor(0, 0.6));

    @Test
    void agreesWithTheFlatGroupWhereAllBoltsLeaveThroughOnePlane() {
        for (long seed = 1; seed < 400; seed++) {
            RandomGroup random = RandomGroup.of(seed);
            List<Bolt> equal = random.bolts().stream()
                    .map(bolt -> Bolt.at(bolt.s(), bolt.t()))
                    .toList();
            FlatGroup flat = new FlatGroup(equal, random.contact());
            BracedGroup space = new BracedGroup(
                    equal.stream().map(bolt -> floor(bolt.s(), bolt.t())).toList(),
                    flat.contact().stream()
                            .map(spot -> floor(spot.s(), spot.t()))
                            .toList());
            Force f = random.force();

            GroupForces plane = flat.under(f);
            GroupForces inSpace = space.under(f.alongS(), f.alongT(), f.off(), f.s(), f.t(), f.height());

            if (plane.held() && equal.size() > 2) {
                assertThat(inSpace.held()).as("seed " + seed).isTrue();
                double size = f.size(0.2);
                assertThat(inSpace.pullN()).as("seed " + seed).containsExactly(plane.pullN(), within(3e-3 * size));
                assertThat(inSpace.shearS()).as("seed " + seed).containsExactly(plane.shearS(), within(1e-6 * size));
            }
        }
    }

    @Test
    void slotsBearAsMuchAsInTheFlatGroup() {
        int slotted = 0;
        for (long seed = 1; seed < 400; seed++) {
            RandomGroup random = RandomGroup.of(seed);
            List<Bolt> bolts = new ArrayList<>();
            List<SpaceBolt> inSpace = new ArrayList<>();
            for (Bolt one : random.bolts()) {
                boolean slot = (bolts.size() + seed) % 3 == 0;
                bolts.add(new Bolt(one.s(), one.t(), 1, slot ? 0 : 1, 1));
                inSpace.add(new SpaceBolt(one.s(), one.t(), 0, 2, -1, slot ? 0 : SpaceBolt.ROUND, false));
            }
            FlatGroup flat = new FlatGroup(bolts, random.contact());
            BracedGroup space = new BracedGroup(
                    inSpace,
                    flat.contact().stream()
                            .map(spot -> floor(spot.s(), spot.t()))
                            .toList());
            Force f = random.force();

            GroupForces plane = flat.under(f);
            GroupForces forces = space.under(f.alongS(), f.alongT(), f.off(), f.s(), f.t(), f.height());

            if (plane.held() && bolts.size() > 4) {
                double size = f.size(0.2);
                assertThat(forces.held()).as("seed " + seed).isTrue();
                assertThat(forces.shearS()).as("seed " + seed).containsExactly(plane.shearS(), within(1e-5 * size));
                assertThat(forces.shearT()).as("seed " + seed).containsExactly(plane.shearT(), within(1e-5 * size));
                slotted++;
            }
        }
        assertThat(slotted).isGreaterThan(50);
    }

    @Test
    void aBraceTakesTheOverturningOffTheFeet() {
        List<SpaceBolt> braced = new ArrayList<>(FEET);
        braced.add(wall(0.1, 1));
        braced.add(wall(0.5, 1));

        GroupForces without = new BracedGroup(FEET, FEET).under(1000, 0, -900, 0.25, 0.3, 0.6);
        GroupForces with = new BracedGroup(braced, FEET).under(1000, 0, -900, 0.25, 0.3, 0.6);

        assertThat(with.held()).isTrue();
        assertThat(without.pullN()[0]).isGreaterThan(300);
        assertThat(with.pullN()[0]).isLessThan(0.3 * without.pullN()[0]);
        assertThat(with.pullN()[4]).isGreaterThan(100);
    }

    @Test
    void pushedAgainstTheWallTheBracePullsOnNoBolt() {
        List<SpaceBolt> braced = new ArrayList<>(FEET);
        braced.add(wall(0.1, 1));
        braced.add(wall(0.5, 1));

        GroupForces forces = new BracedGroup(braced, FEET).under(-1000, 0, -900, 0.25, 0.3, 0.6);

        assertThat(forces.held()).isTrue();
        assertThat(forces.pullN()[4]).isZero();
        assertThat(forces.pullN()[5]).isZero();
    }

    @Test
    void balancesEveryLoad() {
        List<SpaceBolt> braced = new ArrayList<>(FEET);
        braced.add(wall(0.1, 1));
        braced.add(wall(0.5, 1));
        BracedGroup group = new BracedGroup(braced, FEET);
        for (int i = 0; i < 16; i++) {
            double fx = 1000 * Math.cos(i * Math.PI / 8);
            double fy = 1000 * Math.sin(i * Math.PI / 8);

            GroupForces forces = group.under(fx, fy, -500, 0.2, 0.35, 0.7);

            assertThat(forces.held()).as("direction " + i).isTrue();
            double up = -500;
            for (int j = 0; j < 4; j++) {
                up += forces.pressN()[j] - forces.pullN()[j];
            }
            up -= forces.shearT()[4] + forces.shearT()[5];
            assertThat(Math.abs(up)).as("direction " + i).isLessThan(1e-6);
        }
    }
}
