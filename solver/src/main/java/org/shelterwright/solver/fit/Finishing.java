package org.shelterwright.solver.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.BoltDownOrder;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Route;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ways.UnitWays;
import org.shelterwright.solver.fit.distinct.LedgerScore;
import org.shelterwright.solver.order.OrderFinder;
import org.shelterwright.solver.route.WireRouter;

/**
 * Finishes layouts whose units have places: wires are routed, the order of bringing in is found, everything is checked from scratch. What
 * the search of places cannot see shows here, so candidates are finished until enough of them hold.
 */
final class Finishing {
    /** Candidates that are finished together, on however many threads: what comes out does not depend on that number. */
    private static final int BATCH = 4;

    private static final int MOST_BATCHES = 4;
    private static final int USUAL_FITTERS = 2;

    private final Checker checker;
    private final @Nullable BoltDownOrder wished;
    private final Crew crew;

    /**
     * @param wished the order that the layout had before, for its wishes; {@code null} if it had none
     * @param crew does the work
     */
    Finishing(Checker checker, @Nullable BoltDownOrder wished, Crew crew) {
        this.checker = checker;
        this.wished = wished;
        this.crew = crew;
    }

    /** A layout without the routes that a search of places would leave behind: only pinned ones stay. */
    static Layout bare(Layout layout) {
        Map<String, Route> pinned = new LinkedHashMap<>();
        layout.routes().forEach((wire, route) -> {
            if (route.pinned()) {
                pinned.put(wire, route);
            }
        });
        return pinned.size() == layout.routes().size() ? layout : layout.withRoutes(pinned);
    }

    /**
     * Finishes candidates.
     *
     * @param candidates the best first
     * @param count truly different layouts that are wanted
     * @return at most {@code count}, the best by its whole ledger first
     */
    List<FitOption> of(List<FitOption> candidates, int count, StopSignal stop) {
        List<FitOption> finished = new ArrayList<>();
        List<FitOption> chosen = List.of();
        for (int b = 0; b < MOST_BATCHES && b * BATCH < candidates.size(); b++) {
            List<FitOption> batch = candidates.subList(b * BATCH, Math.min(candidates.size(), (b + 1) * BATCH));
            finished.addAll(all(batch));
            finished.sort(FitOption.BEST_FIRST);
            chosen = Choice.apart(finished, count);
            if (stop.stopped() || chosen.get(0).holds()) {
                break;
            }
        }
        return chosen;
    }

    private List<FitOption> all(List<FitOption> batch) {
        List<Callable<FitOption>> tasks = new ArrayList<>();
        for (FitOption option : batch) {
            tasks.add(() -> finished(option));
        }
        return crew.all(tasks);
    }

    private FitOption finished(FitOption option) {
        Layout layout = ordered(routed(option.layout()));
        if (layout.equals(option.layout())) {
            return option;
        }
        Ledger ledger = checker.check(layout);
        var score = LedgerScore.of(ledger, checker.book(), option.score().soft());
        return new FitOption(layout, ledger, Choice.score(score));
    }

    private Layout routed(Layout layout) {
        return layout.brief().wires().isEmpty()
                ? layout
                : WireRouter.route(checker.scene(layout)).in(layout);
    }

    private Layout ordered(Layout layout) {
        var scene = checker.scene(layout);
        if (UnitWays.openings(scene.body()).isEmpty() || scene.units().isEmpty()) {
            return layout;
        }
        var found = new OrderFinder()
                .find(
                        scene,
                        wished == null ? List.of() : wished.before(),
                        wished == null ? USUAL_FITTERS : wished.fitters());
        return layout.withBoltDown(found.order());
    }
}
