package org.shelterwright.app.workpack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.tables.Table;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.layouts.boltdown.Bolting;
import org.shelterwright.layouts.handling.Handling;

/** What has to be laid ready: units, fasteners and tools. */
final class PackLists {
    private PackLists() {}

    /** Units and fasteners by step: what goes into the bag of each step. */
    static Table picks(BoltDownPlan plan) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (BoltDownStep step : plan.steps()) {
            rows.add(Arrays.asList(
                    step.number(), step.unit().name(), step.unit().item().name(), 1, mass(step)));
            for (Bolting one : step.boltings()) {
                int count = one.places().size();
                rows.add(Arrays.asList(step.number(), step.unit().name(), "bolt " + bolt(one), count, null));
                rows.add(Arrays.asList(
                        step.number(),
                        step.unit().name(),
                        "washer for " + one.thread() + ", under each head",
                        count,
                        null));
            }
        }
        return new Table("Pick list", List.of("step", "for", "part", "pieces", "mass up to kg"), rows);
    }

    private static @Nullable Double mass(BoltDownStep step) {
        Handling handling = step.handling();
        return handling == null ? null : Math.rint(10 * handling.massKg()) / 10;
    }

    /** Fasteners over all steps. */
    static Table fasteners(BoltDownPlan plan) {
        Map<String, Integer> bolts = new TreeMap<>();
        for (BoltDownStep step : plan.steps()) {
            for (Bolting one : step.boltings()) {
                bolts.merge(bolt(one), one.places().size(), Integer::sum);
            }
        }
        List<List<@Nullable Object>> rows = new ArrayList<>();
        bolts.forEach((bolt, count) -> rows.add(Arrays.asList(bolt, count, count)));
        return new Table("Fasteners", List.of("bolt", "pieces", "washers"), rows);
    }

    /** Tools, each with the steps that need it. */
    static Table tools(BoltDownPlan plan) {
        Map<String, List<String>> tools = new LinkedHashMap<>();
        for (BoltDownStep step : plan.steps()) {
            for (String tool : step.tools()) {
                tools.computeIfAbsent(tool, any -> new ArrayList<>()).add(Integer.toString(step.number()));
            }
        }
        List<List<@Nullable Object>> rows = new ArrayList<>();
        tools.forEach((tool, steps) -> rows.add(Arrays.asList(tool, String.join(", ", steps))));
        return new Table("Tools", List.of("tool", "for steps"), rows);
    }

    /** Racks that are filled on the bench before they come in. */
    static Table bench(BoltDownPlan plan) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (BoltDownStep step : plan.steps()) {
            if (!step.carried().filled().isEmpty()) {
                rows.add(Arrays.asList(
                        step.number() + ", " + step.unit().name(),
                        String.join(", ", step.carried().filled())));
            }
        }
        return new Table("Built on the bench before", List.of("for step", "pieces, lowest first"), rows);
    }

    private static String bolt(Bolting one) {
        String grade = one.grade();
        return one.thread() + (grade == null ? ", grade not stated" : ", grade " + grade)
                + ", length as the joint needs";
    }
}
