package org.shelterwright.solver.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.layouts.layout.BoltDownOrder.Before;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.ways.UnitWays;
import org.shelterwright.solver.order.planted.FoundOrderTruth;
import org.shelterwright.solver.order.planted.PlantedOrder;
import org.shelterwright.solver.order.planted.PlantedOrder.Rings;

class OrderFinderTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void findsAnOrderExactlyWhenTryingAllFindsOne(long seed) {
        Random random = new Random(seed);
        int possible = 0;
        int impossible = 0;
        for (int i = 0; i < 12; i++) {
            long planted = random.nextLong();
            Scene scene = PlantedOrder.of(planted, 3 + random.nextInt(6), random.nextInt(3) == 0)
                    .scene();
            List<Before> before = wishes(scene, random);

            FoundOrder found = new OrderFinder(4).find(scene, before, 1);

            boolean any = tryAll(scene, before);
            assertThat(found.complete())
                    .as("seed %d, planted %d", seed, planted)
                    .isEqualTo(any);
            possible += any ? 1 : 0;
            impossible += any ? 0 : 1;
            assertThat(found.order().units().size() + found.stuck().size())
                    .isEqualTo(scene.units().size());
            assertBringsIn(scene, found, before);
        }
        assertThat(possible).isPositive();
        assertThat(impossible).isPositive();
    }

    private static List<Before> wishes(Scene scene, Random random) {
        List<Before> before = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            String a = scene.units().get(random.nextInt(scene.units().size())).id();
            String b = scene.units().get(random.nextInt(scene.units().size())).id();
            if (!a.equals(b)) {
                before.add(new Before(a, b, null));
            }
        }
        return before;
    }

    /** Takes out in every order, by sets of what is left; each question is asked afresh. */
    private static boolean tryAll(Scene scene, List<Before> before) {
        BitSet in = new BitSet();
        in.set(0, scene.units().size());
        return tryAll(scene, before, in, new UnitWays(scene), new HashMap<>());
    }

    private static boolean tryAll(
            Scene scene, List<Before> before, BitSet in, UnitWays ways, Map<BitSet, Boolean> known) {
        if (in.isEmpty()) {
            return true;
        }
        Boolean seen = known.get(in);
        if (seen != null) {
            return seen;
        }
        boolean any = false;
        for (int i = in.nextSetBit(0); i >= 0 && !any; i = in.nextSetBit(i + 1)) {
            PlacedUnit unit = scene.units().get(i);
            boolean waits = before.stream()
                    .anyMatch(one -> one.first().equals(unit.id())
                            && in.get(scene.unit(one.then()).orElseThrow().index()));
            BitSet gone = new BitSet();
            gone.set(0, scene.units().size());
            gone.andNot(in);
            if (!waits && ways.out(unit, gone).free()) {
                BitSet left = (BitSet) in.clone();
                left.clear(i);
                any = tryAll(scene, before, left, ways, known);
            }
        }
        known.put((BitSet) in.clone(), any);
        return any;
    }

    private static void assertBringsIn(Scene scene, FoundOrder found, List<Before> before) {
        UnitWays ways = new UnitWays(scene);
        BitSet gone = new BitSet();
        gone.set(0, scene.units().size());
        found.stuck()
                .forEach(one -> gone.clear(scene.unit(one.unit()).orElseThrow().index()));
        for (String id : found.order().units()) {
            PlacedUnit unit = scene.unit(id).orElseThrow();
            assertThat(ways.out(unit, gone).free()).as(id).isTrue();
            gone.clear(unit.index());
        }
        List<String> order = found.order().units();
        for (Before one : before) {
            if (order.contains(one.first()) && order.contains(one.then())) {
                assertThat(order.indexOf(one.first())).isLessThan(order.indexOf(one.then()));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {8, 20, 60})
    void bringsInEveryPlantedCase(int units) {
        int cases = units == 60 ? 2 : 6;
        for (long seed = 1; seed <= cases; seed++) {
            PlantedOrder planted = PlantedOrder.of(seed, units, false);

            Scene scene = planted.scene();
            FoundOrder found = new OrderFinder(2).find(scene, List.of(), 1);

            assertThat(planted.order()).hasSize(units);
            assertThat(found.stuck()).as("seed %d, %d units", seed, units).isEmpty();
            assertThat(FoundOrderTruth.faults(scene, found))
                    .as("seed %d, %d units", seed, units)
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {8, 20})
    void namesTheLinkedRingsAndNothingElse(int units) {
        for (long seed = 1; seed <= 4; seed++) {
            PlantedOrder planted = PlantedOrder.of(seed, units, true);
            Scene scene = planted.scene();

            FoundOrder found = new OrderFinder(2).find(scene, List.of(), 1);

            assertThat(found.stuck().stream().map(Stuck::unit).toList())
                    .as("seed %d", seed)
                    .containsExactlyInAnyOrderElementsOf(planted.rings());
            for (Stuck stuck : found.stuck()) {
                assertThat(stuck.blockers()).hasSize(1);
                assertThat(planted.rings()).containsAll(stuck.blockers());
            }
            assertThat(found.circles()).singleElement().asString().contains("which would be in its way");
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {8, 20})
    void namesTrueBlockersOfAllThatIsShutInBehindTheRings(int units) {
        int shutIn = 0;
        for (long seed = 1; seed <= 4; seed++) {
            PlantedOrder planted = PlantedOrder.of(seed, units, Rings.BEHIND_THE_DOOR);
            Scene scene = planted.scene();

            FoundOrder found = new OrderFinder(2).find(scene, List.of(), 1);

            List<String> stuck = found.stuck().stream().map(Stuck::unit).toList();
            assertThat(stuck).as("seed %d", seed).containsAll(planted.rings());
            assertThat(FoundOrderTruth.faults(scene, found)).as("seed %d", seed).isEmpty();
            shutIn += stuck.size() - planted.rings().size();
        }
        assertThat(shutIn).isPositive();
    }

    @Test
    void theRestDoesNotDependOnWhatIsTakenOutFirst() {
        for (long seed = 1; seed <= 6; seed++) {
            Scene scene = PlantedOrder.of(seed, 12, true).scene();
            BitSet rest = TakeOut.greedily(
                            new Removability(scene, List.of()), scene.units().size())
                    .rest();
            Random random = new Random(seed);
            for (int shuffle = 0; shuffle < 3; shuffle++) {
                assertThat(shuffled(scene, random)).as("seed %d", seed).isEqualTo(rest);
            }
        }
    }

    private static BitSet shuffled(Scene scene, Random random) {
        Removability removability = new Removability(scene, List.of());
        BitSet in = new BitSet();
        in.set(0, scene.units().size());
        boolean more = true;
        while (more) {
            more = false;
            List<Integer> left = new ArrayList<>(in.stream().boxed().toList());
            Collections.shuffle(left, random);
            for (int unit : left) {
                if (removability.removable(unit, in)) {
                    in.clear(unit);
                    more = true;
                }
            }
        }
        return in;
    }

    @Test
    void explainsWishesThatContradictEachOther() {
        Scene scene = PlantedOrder.of(3, 4, false).scene();

        FoundOrder found = new OrderFinder()
                .find(scene, List.of(new Before("u0", "u1", "same tool"), new Before("u1", "u0", null)), 1);

        assertThat(found.complete()).isFalse();
        assertThat(found.circles().get(0))
                .contains("u0 must be in before u1 (set: same tool)")
                .contains("u1 must be in before u0 (set)")
                .endsWith("no order meets all of this. Take one of the demands away.");
    }

    @Test
    void givesTheSameOrderEachTime() {
        Scene scene = PlantedOrder.of(5, 15, false).scene();

        assertThat(new OrderFinder().find(scene, List.of(), 1))
                .isEqualTo(new OrderFinder().find(PlantedOrder.of(5, 15, false).scene(), List.of(), 1));
    }
}
