package org.shelterwright.layouts.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shelterwright.catalog.item.Converter;
import org.shelterwright.catalog.item.Current;
import org.shelterwright.layouts.brief.Supply;
import org.shelterwright.layouts.brief.Supply.Kind;

/** Sums over random trees of supplies, against a plain twin that follows each load up to the shore. */
class FlowTwinTest {
    static List<Long> seeds() {
        List<Long> seeds = new ArrayList<>();
        for (long seed = 0; seed < 200; seed++) {
            seeds.add(seed);
        }
        return seeds;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyLoadComesUpToTheShoreThroughItsConverters(long seed) {
        // given a tree of converters of several voltages below one shore supply, and loads on all of them
        Random random = new Random(seed);
        TestNet test = new TestNet().supply(TestNet.shore(null, 1000.0));
        Map<String, String> above = new HashMap<>();
        Map<String, Double> efficiency = new HashMap<>();
        List<String> ids = new ArrayList<>(List.of("mains"));
        for (int i = 0; i < 1 + random.nextInt(5); i++) {
            String id = "bus" + i;
            String from = ids.get(random.nextInt(ids.size()));
            double share = 0.5 + random.nextDouble() / 2;
            above.put(id, from);
            efficiency.put(id, share);
            test.plant("unit" + i, TestNet.converter(new Converter(5000.0, null, null, null, share, 0)));
            test.supply(TestNet.supply(
                    id, Kind.CONVERTER, Current.DC, 12 * (i + 1), null, null, "unit" + i, List.of(from), null));
            ids.add(id);
        }
        Map<String, Double> expected = new HashMap<>();
        for (int i = 0; i < 12; i++) {
            String on = ids.get(random.nextInt(ids.size()));
            double watts = 1 + random.nextInt(500);
            test.load("load" + i, TestNet.ac(watts, 1.0)).feed("load" + i, on, null);
            for (String at = on; at != null; at = above.get(at)) {
                expected.merge(at, watts, Double::sum);
                watts /= efficiency.getOrDefault(at, 1.0);
            }
        }
        // when
        StateFlow state = test.net().flows().get(0);
        // then
        for (SupplyFlow flow : state.flows()) {
            Supply supply = flow.supply();
            assertThat(flow.live()).as("seed " + seed + ", " + supply.id()).isTrue();
            assertThat(flow.totalW())
                    .as("seed " + seed + ", " + supply.id())
                    .isCloseTo(expected.getOrDefault(supply.id(), 0.0), within(1e-9));
            assertThat(flow.meanW()).isCloseTo(flow.totalW(), within(1e-9));
        }
    }
}
