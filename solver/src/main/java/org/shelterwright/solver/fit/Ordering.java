package org.shelterwright.solver.fit;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.BoltDownOrder;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.ways.UnitWays;
import org.shelterwright.solver.fit.distinct.LedgerScore;
import org.shelterwright.solver.order.FoundOrder;
import org.shelterwright.solver.order.OrderFinder;

/** Gives layouts that were found an order of bringing in, and checks them again with it. */
final class Ordering {
    private static final int USUAL_FITTERS = 2;

    private final Checker checker;
    private final @Nullable BoltDownOrder wished;

    /** @param wished the order that the layout had before, for its wishes; {@code null} if it had none */
    Ordering(Checker checker, @Nullable BoltDownOrder wished) {
        this.checker = checker;
        this.wished = wished;
    }

    /** The options with orders, the best first. Options without a way for some unit fall behind equal ones. */
    List<FitOption> of(List<FitOption> options) {
        return options.stream()
                .map(this::of)
                .sorted(Comparator.comparing(FitOption::score))
                .toList();
    }

    private FitOption of(FitOption option) {
        Scene scene = checker.scene(option.layout());
        if (UnitWays.openings(scene.body()).isEmpty() || scene.units().isEmpty()) {
            return option;
        }
        FoundOrder found = new OrderFinder()
                .find(
                        scene,
                        wished == null ? List.of() : wished.before(),
                        wished == null ? USUAL_FITTERS : wished.fitters());
        Layout layout = option.layout().withBoltDown(found.order());
        Ledger ledger = checker.check(layout);
        return new FitOption(
                layout,
                ledger,
                Choice.score(
                        LedgerScore.of(ledger, checker.book(), option.score().soft())));
    }
}
