package org.shelterwright.layouts.study;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.study.Setting.CarCount;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Leg;
import org.shelterwright.layouts.transport.Load;

/** A journey with settings applied: loads that become several, or none, on cars of another type; limits. */
final class JourneyVariant {
    private JourneyVariant() {}

    /**
     * Makes the start of a run.
     *
     * @throws IllegalArgumentException with a sentence if a setting makes no sense for the journey
     */
    static Journey of(Journey base, Collection<Setting> settings) {
        Map<String, List<Load>> loads = new LinkedHashMap<>();
        base.loads().forEach(load -> loads.put(load.id(), List.of(load)));
        Map<String, Double> limits = new TreeMap<>(base.limits());
        for (Setting setting : settings) {
            for (CarCount count : setting.cars()) {
                Load load = base.load(count.load())
                        .orElseThrow(() ->
                                new IllegalArgumentException("The journey has no load \"" + count.load() + "\"."));
                loads.put(load.id(), several(load, count.car(), count.count()));
            }
            limits.putAll(setting.limits());
        }
        List<Leg> legs = base.legs().stream()
                .map(leg -> leg.withLoads(leg.loads().stream()
                        .flatMap(
                                id -> loads.getOrDefault(id, List.of()).stream().map(Load::id))
                        .toList()))
                .toList();
        return new Journey(
                base.id(),
                base.name(),
                base.pieces(),
                loads.values().stream().flatMap(List::stream).toList(),
                legs,
                limits,
                base.provenance(),
                base.note());
    }

    private static List<Load> several(Load load, @Nullable String car, int count) {
        List<Load> several = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            String mark = count == 1 ? "" : "-" + i;
            String name = count == 1 ? load.name() : load.name() + ", " + i;
            several.add(new Load(
                    load.id() + mark,
                    name,
                    car == null ? load.car() : car,
                    List.of(),
                    List.of(),
                    List.of(),
                    load.packed(),
                    load.handBrake(),
                    load.gear(),
                    load.note()));
        }
        return several;
    }
}
