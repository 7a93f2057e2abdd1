package org.shelterwright.app.workpack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.tables.Table;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.layouts.boltdown.Bolting;
import org.shelterwright.layouts.boltdown.CableTask;
import org.shelterwright.layouts.boltdown.StepWords;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.handling.Handling;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.scene.Scene;

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

    /** Racks that are filled on the bench before they come in, with who does it and when, or at their place. */
    static Table racks(Crew crew) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (BoltDownStep step : crew.plan().steps()) {
            List<InRack> pieces = Stream.concat(step.carried().filled().stream(), step.carried().later().stream())
                    .toList();
            if (!pieces.isEmpty()) {
                rows.add(Arrays.asList(
                        step.number() + ", " + step.unit().name(),
                        step.carried().later().isEmpty() ? "on the bench, " + crew.bench(step) : "once it is bolted",
                        pieces.stream().map(StepWords::seated).collect(Collectors.joining(", "))));
            }
        }
        return new Table(
                "Racks to fill",
                List.of("for step", "where and when", "pieces by height unit, counted from below"),
                rows);
    }

    /** Cables to cut, with the steps in which they are laid and connected. */
    static Table cables(Scene scene, BoltDownPlan plan) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (LaidWire laid : CableNet.of(scene).wires()) {
            String id = laid.wire().id();
            Cable cable = laid.cable();
            rows.add(Arrays.asList(
                    id.toUpperCase(Locale.ROOT),
                    cable == null ? "not chosen" : cable.name(),
                    laid.cutLength() < 0 ? "" : Numerals.of(Math.ceil(laid.cutLength() / 1e5) / 10, 1),
                    CableTask.named(scene, laid.wire().from()),
                    CableTask.named(scene, laid.wire().to()),
                    step(plan, task -> task.wire().equals(id) && task.laidMetres() > 0),
                    step(plan, task -> task.wire().equals(id) && task.closed())));
        }
        return new Table("Cables to cut", List.of("wire", "cable", "m", "from", "to", "laid", "connected"), rows);
    }

    private static @Nullable String step(BoltDownPlan plan, Predicate<CableTask> done) {
        return plan.steps().stream()
                .filter(step -> step.cables().stream().anyMatch(done))
                .findFirst()
                .map(step -> Integer.toString(step.number()))
                .orElse(null);
    }

    private static String bolt(Bolting one) {
        String grade = one.grade();
        return one.thread() + (grade == null ? ", grade not stated" : ", grade " + grade)
                + ", length as the joint needs";
    }
}
