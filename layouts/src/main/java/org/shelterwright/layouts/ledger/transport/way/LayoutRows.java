package org.shelterwright.layouts.ledger.transport.way;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.LedgerBuilder;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.rules.LoadCase;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.transport.scene.LegScene;

/** Limits of a layout answered under the rules of a leg. */
final class LayoutRows {
    private LayoutRows() {}

    /**
     * Answers limits of a layout with the figures of its brief and of the leg, and with the load cases of the leg alone.
     *
     * @param yaw how the layout is turned on what carries it
     */
    static Ledger of(LegScene leg, Layout layout, List<Limit> limits, QuarterTurn yaw) {
        Set<String> sets = new LinkedHashSet<>(layout.brief().ruleSets());
        sets.addAll(leg.leg().ruleSets());
        Brief brief = layout.brief().withRuleSets(List.copyOf(sets));
        List<LoadCase> cases = new ArrayList<>();
        leg.rules().loadCases().forEach(one -> cases.add(one.turned(yaw)));
        Rules rules = Rules.of(brief, leg.journey().ruleSets()).replacingLoadCases(cases);
        Layout travelling = layout.withAsked(brief, layout.parts());
        return LedgerBuilder.full(new LimitBook(limits), Scene.of(travelling, rules));
    }

    /** The first row; of met ones, the first that is no count of things: as many as needed is enough there. */
    private static Row governing(Ledger ledger) {
        return ledger.rows().stream()
                .filter(row -> row.verdict() != Verdict.MET || !row.unit().equals("fixings"))
                .findFirst()
                .orElse(ledger.rows().get(0));
    }

    /** The row that governs, told as a row of the journey. */
    static Row told(RowDraft draft, Ledger ledger, String name) {
        Row worst = governing(ledger);
        long broken = ledger.count(Verdict.BROKEN);
        String more = broken > 1 ? " " + (broken - 1) + " more limits of it are broken." : "";
        String finding = name + ": " + worst.title() + ". " + worst.finding() + more;
        Double demand = worst.demand();
        Double capacity = worst.capacity();
        draft.source(worst.source()).mend(worst.mend());
        if (demand == null || capacity == null) {
            return draft.notAssessed(finding);
        }
        if (worst.unit().isEmpty() && demand == 0 && capacity == 0) {
            return draft.held(finding);
        }
        return worst.sense() == Row.Sense.AT_MOST
                ? draft.atMost(demand, capacity, worst.unit(), finding)
                : draft.atLeast(demand, capacity, worst.unit(), finding);
    }
}
