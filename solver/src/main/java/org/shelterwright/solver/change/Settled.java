package org.shelterwright.solver.change;

import java.util.List;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.BoltDownOrder;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.solver.order.OrderFinder;
import org.shelterwright.solver.route.WireRouter;

/** A layout after units have moved, with wires laid anew only where they no longer hold, and another order only if the old one fails. */
record Settled(Layout layout, Ledger ledger) {
    private static final int USUAL_FITTERS = 2;

    static Settled of(Checker checker, Layout moved) {
        Layout layout = moved;
        if (!layout.brief().wires().isEmpty()) {
            layout = WireRouter.complete(checker.scene(layout)).in(layout);
        }
        Ledger ledger = checker.check(layout);
        if (!orderHolds(layout, ledger)) {
            BoltDownOrder old = layout.boltDown();
            BoltDownOrder found = new OrderFinder()
                    .find(
                            checker.scene(layout),
                            old == null ? List.of() : old.before(),
                            old == null ? USUAL_FITTERS : old.fitters())
                    .order();
            Layout ordered = layout.withBoltDown(found);
            Ledger other = checker.check(ordered);
            if (broken(other) <= broken(ledger)) {
                return new Settled(ordered, other);
            }
        }
        return new Settled(layout, ledger);
    }

    private static boolean orderHolds(Layout layout, Ledger ledger) {
        return layout.boltDown() != null && broken(ledger) == 0;
    }

    private static long broken(Ledger ledger) {
        return ledger.rows().stream()
                .filter(row -> row.subject() == Subject.BOLT_DOWN)
                .filter(Settled::open)
                .count();
    }

    private static boolean open(Row row) {
        return row.verdict() == Verdict.BROKEN || row.verdict() == Verdict.NOT_ASSESSED;
    }
}
