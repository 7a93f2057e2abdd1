package org.shelterwright.solver.bench;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.file.LayoutFormats;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.FitOption;
import org.shelterwright.solver.fit.FitRequest;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.route.RoutePlan;
import org.shelterwright.solver.route.WireRouter;

/** Routing: time by size, and what the pull of wires saves when places are searched. */
final class WireRuns {
    private static final List<Integer> SIZES = List.of(10, 20, 40, 60, 80);
    private static final List<String> SAMPLES = List.of("river-post", "water-lab");
    private static final int TIMES = 7;
    private static final long MOVES = 400_000;

    private final Setting setting;
    private final Checker checker = Checker.standard();

    WireRuns(Setting setting) {
        this.setting = setting;
    }

    String run() {
        Machine machine = new Machine();
        long end = setting.endNanos();
        Table times = new Table(
                "layout",
                "units",
                "wires",
                "routed",
                "all (ms)",
                "after one move (ms)",
                "laid (m)",
                "gap (%)",
                "rounds");
        for (String sample : SAMPLES) {
            time(
                    times,
                    sample,
                    LayoutFiles.read(Samples.layout(sample).orElseThrow()).layout());
        }
        for (int size : SIZES) {
            if (System.nanoTime() < end) {
                time(times, "planted", PlantedWires.of(setting.seed(), size));
            }
        }
        Table pulls = new Table(
                "sample", "seed", "laid with pull (m)", "laid without (m)", "saving (%)", "broken rows with / without");
        for (long seed = setting.seed(); seed < setting.seed() + 3; seed++) {
            for (String sample : SAMPLES) {
                if (System.nanoTime() < end) {
                    pull(pulls, sample, seed);
                }
            }
        }
        return """
                # Wires

                CPU time, median of %d runs in one process, one thread. "After one move": the first unit with wires shifted by 50 mm, the wires
                that this concerns laid again.

                %s
                Date: %s.

                %s
                The same briefs searched with %d moves, once with the pull of the wires and once as if no wires were asked for; then all
                wires are routed in both.

                %s""".formatted(TIMES, machine.text(), setting.date(), times.text(), MOVES, pulls.text());
    }

    private void time(Table table, String name, Layout given) {
        Layout layout = given.withRoutes(Map.of());
        RoutePlan plan = WireRouter.route(checker.scene(layout));
        List<Double> all = new ArrayList<>();
        List<Double> moved = new ArrayList<>();
        Scene routed = checker.scene(plan.in(layout));
        LaidWire first = CableNet.of(routed).wires().get(0);
        String unit = first.units().get(0);
        Placement old = layout.placements().get(unit);
        for (int i = 0; i < TIMES && old != null; i++) {
            Scene scene = checker.scene(layout);
            long begin = cpuNanos();
            WireRouter.route(scene);
            all.add((cpuNanos() - begin) / 1e6);
            Scene after = routed.with(
                    old.withStation(old.station().with(old.station().pose().moved(new Point(50_000, 0, 0)))));
            CableNet.of(after);
            begin = cpuNanos();
            WireRouter.reroute(after, Set.of(unit));
            moved.add((cpuNanos() - begin) / 1e6);
        }
        table.add(
                name,
                layout.brief().units().size(),
                layout.brief().wires().size(),
                plan.routes().size(),
                median(all),
                median(moved),
                laid(plan.in(layout)),
                100 * plan.gap(),
                plan.rounds());
    }

    private void pull(Table table, String sample, long seed) {
        Brief brief = LayoutFormats.BRIEF.open(Samples.brief(sample)).value();
        Layout with = found(brief, brief, seed);
        Layout without = found(brief, brief.withWires(List.of()), seed);
        double a = laid(with);
        double b = laid(without);
        table.add(sample, seed, a, b, 100 * (b - a) / b, broken(with) + " / " + broken(without));
    }

    /** A layout that was searched for one brief, with the wires of another routed. */
    private Layout found(Brief brief, Brief searched, long seed) {
        Layout question = Layout.empty(searched, Parts.of(searched, BuiltInCatalog.read()));
        FitRequest request = new FitRequest(question, seed, Budget.moves(MOVES), 2, 1);
        FitOption best = new StandardFitter(checker)
                .fit(request, progress -> {}, new StopSignal())
                .options()
                .get(0);
        Layout asked = best.layout().withAsked(brief, Parts.of(brief, BuiltInCatalog.read()));
        return WireRouter.route(checker.scene(asked)).in(asked);
    }

    private long broken(Layout layout) {
        return checker.check(layout).count(Verdict.BROKEN);
    }

    private double laid(Layout layout) {
        return CableNet.of(checker.scene(layout)).wires().stream()
                .mapToDouble(wire ->
                        wire.routed() && wire.shape() != null ? wire.shape().length() / 1e6 : 0)
                .sum();
    }

    private static long cpuNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static double median(List<Double> values) {
        List<Double> sorted = new ArrayList<>(values);
        Collections.sort(sorted);
        return sorted.isEmpty() ? Double.NaN : sorted.get(sorted.size() / 2);
    }
}
