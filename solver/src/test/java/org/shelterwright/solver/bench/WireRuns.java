package org.shelterwright.solver.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.route.RoutePlan;
import org.shelterwright.solver.route.WireRouter;

/** Routing by size: all wires from nothing, and what a move of one unit concerns, as a distribution over all units. */
final class WireRuns {
    private static final List<Integer> SIZES = List.of(10, 20, 40, 60, 80);
    private static final List<String> SAMPLES = List.of("river-post", "water-lab");
    private static final int WARM = 10;
    private static final int TIMES = 7;
    private static final int SHIFT = 50_000;
    private static final int[][] SHIFTS = {{SHIFT, 0}, {-SHIFT, 0}, {0, SHIFT}, {0, -SHIFT}};
    private static final double AIM_MS = 5;

    private final Setting setting;
    private final Checker checker = Checker.standard();

    WireRuns(Setting setting) {
        this.setting = setting;
    }

    String run() {
        Machine machine = new Machine();
        long end = setting.endNanos();
        Table all = new Table("layout", "units", "wires", "routed", "all (ms)", "laid (m)", "gap (%)", "rounds");
        Table moved = new Table(
                "layout", "units", "wires", "moves", "median (ms)", "90 %", "99 %", "longest", "within 5 ms (%)");
        for (String sample : SAMPLES) {
            Layout layout =
                    LayoutFiles.read(Samples.layout(sample).orElseThrow()).layout();
            measure(all, moved, sample, layout);
        }
        for (int size : SIZES) {
            if (System.nanoTime() < end) {
                measure(all, moved, "planted", PlantedWires.of(setting.seed(), size));
            }
        }
        return """
                # Wires

                All wires routed from nothing in a scene of which nothing is known yet: wall clock, median of %d runs after %d to warm up.

                %s
                What a move of one unit concerns laid again: every placed unit shifted by 50 mm to each of four sides, each time from the
                routed layout, the net of the moved scene included. Wall clock over all of these moves, after %d rounds to warm up. A move may
                put a unit into another, so that some wires find no way: that is part of it.

                %s
                %s
                Date: %s.
                """.formatted(TIMES, WARM, all.text(), WARM, moved.text(), machine.text(), setting.date());
    }

    private void measure(Table all, Table moved, String name, Layout given) {
        Layout layout = given.withRoutes(Map.of());
        List<Double> full = new ArrayList<>();
        List<Double> some = new ArrayList<>();
        Scene first = checker.scene(layout);
        RoutePlan plan = WireRouter.route(first);
        for (int i = 0; i < WARM + TIMES; i++) {
            Scene scene = checker.scene(layout);
            long begin = System.nanoTime();
            WireRouter.route(scene);
            double ms = (System.nanoTime() - begin) / 1e6;
            if (i >= WARM) {
                full.add(ms);
            }
        }
        Scene routed = first.after(plan.in(layout));
        for (int i = 0; i <= WARM; i++) {
            some.clear();
            layout.placements().values().forEach(old -> {
                for (int[] shift : SHIFTS) {
                    some.add(reroute(routed, old, new Point(shift[0], shift[1], 0)));
                }
            });
        }
        Collections.sort(some);
        Collections.sort(full);
        int units = layout.brief().units().size();
        int wires = layout.brief().wires().size();
        all.add(name, units, wires, plan.routes().size(), at(full, 0.5), laid(routed), 100 * plan.gap(), plan.rounds());
        moved.add(
                name,
                units,
                wires,
                some.size(),
                at(some, 0.5),
                at(some, 0.9),
                at(some, 0.99),
                at(some, 1),
                100.0 * some.stream().filter(ms -> ms <= AIM_MS).count() / some.size());
    }

    private static double reroute(Scene routed, Placement old, Point shift) {
        Scene after = routed.with(
                old.withStation(old.station().with(old.station().pose().moved(shift))));
        long begin = System.nanoTime();
        WireRouter.reroute(after, Set.of(old.unit()));
        return (System.nanoTime() - begin) / 1e6;
    }

    private static double laid(Scene scene) {
        return CableNet.of(scene).wires().stream()
                .mapToDouble(wire ->
                        wire.routed() && wire.shape() != null ? wire.shape().length() / 1e6 : 0)
                .sum();
    }

    private static double at(List<Double> sorted, double share) {
        return sorted.get((int) Math.min(sorted.size() - 1, Math.floor(share * sorted.size())));
    }
}
