package org.shelterwright.app.desk.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.layout.Layout;

/** In how many things two layouts differ: units, places, acceptances, and the rest of the brief. */
final class Differences {
    private Differences() {}

    static int count(Layout one, Layout other) {
        int count = differing(units(one), units(other))
                + differing(one.placements(), other.placements())
                + differing(acceptances(one), acceptances(other));
        boolean restOfBrief = units(one).equals(units(other)) && !one.brief().equals(other.brief());
        return count + (restOfBrief ? 1 : 0);
    }

    private static Map<String, UnitSpec> units(Layout layout) {
        return byKey(layout.brief().units(), UnitSpec::id);
    }

    private static Map<List<String>, Acceptance> acceptances(Layout layout) {
        return byKey(
                layout.acceptances(),
                one -> Stream.concat(Stream.of(one.limit()), one.units().stream())
                        .toList());
    }

    private static <K, V> Map<K, V> byKey(List<V> values, Function<V, K> key) {
        return values.stream().collect(Collectors.toMap(key, Function.identity(), (a, b) -> b, LinkedHashMap::new));
    }

    private static <K, V> int differing(Map<K, V> one, Map<K, V> other) {
        return (int) Stream.concat(one.keySet().stream(), other.keySet().stream())
                .distinct()
                .filter(key -> !Objects.equals(one.get(key), other.get(key)))
                .count();
    }
}
