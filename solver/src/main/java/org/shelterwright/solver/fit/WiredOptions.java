package org.shelterwright.solver.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Route;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.fit.distinct.LedgerScore;
import org.shelterwright.solver.route.WireRouter;

/** Layouts that a search offers, with their wires routed and checked again. */
final class WiredOptions {
    private final Checker checker;

    WiredOptions(Checker checker) {
        this.checker = checker;
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

    /** The options with routes, the best first by the ledgers with them; as they are if no wires are asked for. */
    List<FitOption> routed(List<FitOption> options) {
        List<FitOption> routed = new ArrayList<>();
        for (FitOption option : options) {
            routed.add(option.layout().brief().wires().isEmpty() ? option : routed(option));
        }
        routed.sort(Comparator.comparing(FitOption::score));
        return routed;
    }

    private FitOption routed(FitOption option) {
        Scene scene = checker.scene(option.layout());
        Layout layout = WireRouter.route(scene).in(option.layout());
        Ledger ledger = checker.check(layout);
        return new FitOption(
                layout,
                ledger,
                Choice.score(
                        LedgerScore.of(ledger, checker.book(), option.score().soft())));
    }
}
