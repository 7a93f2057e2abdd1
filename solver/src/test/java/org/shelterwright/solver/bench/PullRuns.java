package org.shelterwright.solver.bench;

import java.util.List;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFormats;
import org.shelterwright.layouts.layout.Contents;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.FitOption;
import org.shelterwright.solver.fit.FitRequest;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.route.WireRouter;

/** What the pull of wires saves when places are searched: the same brief with it, and as if no wires were asked for. */
final class PullRuns {
    private static final List<String> SAMPLES = List.of("river-post", "water-lab");
    private static final int SEEDS = 3;
    private static final long MOVES = Budget.USUAL_MOVES;

    private static final Catalog CATALOG = BuiltInCatalog.read();

    private final Setting setting;
    private final Checker checker = Checker.standard();

    PullRuns(Setting setting) {
        this.setting = setting;
    }

    String run() {
        Machine machine = new Machine();
        long end = setting.endNanos();
        Table pulls = new Table(
                "layout",
                "seed",
                "laid with pull (m)",
                "laid without (m)",
                "saving (%)",
                "wires without a way, with / without",
                "broken rows, with / without");
        double with = 0;
        double without = 0;
        for (long seed = setting.seed(); seed < setting.seed() + SEEDS; seed++) {
            for (String sample : SAMPLES) {
                if (System.nanoTime() >= end) {
                    break;
                }
                Brief brief = LayoutFormats.BRIEF.open(Samples.brief(sample)).value();
                Layout question =
                        Layout.empty(brief, Parts.of(brief, CATALOG)).withContents(Contents.of(brief, CATALOG));
                Layout pulled = found(question, brief, seed);
                Layout free = found(question, brief.withWires(List.of()), seed);
                double a = laid(pulled);
                double b = laid(free);
                long lost = unrouted(pulled) + unrouted(free);
                with += lost == 0 ? a : 0;
                without += lost == 0 ? b : 0;
                pulls.add(
                        sample,
                        seed,
                        a,
                        b,
                        lost == 0 ? Double.valueOf(100 * (b - a) / b) : "",
                        unrouted(pulled) + " / " + unrouted(free),
                        broken(pulled) + " / " + broken(free));
            }
        }
        pulls.add("all with every way", "", with, without, 100 * (without - with) / without, "", "");
        return """
                # What the pull of wires saves

                The same briefs searched with %d moves, on two threads, once with the pull of the wires and once as if no wires were asked
                for; then all wires are routed in both and measured by the full check. Lengths are compared where every wire has a way in both.

                %s
                %s
                Date: %s.
                """.formatted(MOVES, pulls.text(), machine.text(), setting.date());
    }

    /** A layout that was searched for a brief, with the wires of the question routed. */
    private Layout found(Layout question, Brief searched, long seed) {
        Layout asked = Layout.empty(searched, question.parts()).withContents(question.contents());
        FitRequest request = new FitRequest(asked, seed, Budget.moves(MOVES), 2, 1);
        FitOption best = new StandardFitter(checker)
                .fit(request, progress -> {}, new StopSignal())
                .options()
                .get(0);
        Layout whole = best.layout().withAsked(question.brief(), question.parts());
        return WireRouter.route(checker.scene(whole)).in(whole);
    }

    private long broken(Layout layout) {
        return checker.check(layout).count(Verdict.BROKEN);
    }

    private long unrouted(Layout layout) {
        return CableNet.of(checker.scene(layout)).wires().stream()
                .filter(wire -> !wire.routed())
                .count();
    }

    private double laid(Layout layout) {
        return CableNet.of(checker.scene(layout)).wires().stream()
                .mapToDouble(wire ->
                        wire.routed() && wire.shape() != null ? wire.shape().length() / 1e6 : 0)
                .sum();
    }
}
