package org.shelterwright.layouts.ledger.access;

import java.util.Optional;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.scene.Scene;

/**
 * The roof over a way out is high enough: inside height of the body &gt;= the set height. What hangs from the roof is looked
 * at by the way out itself, with {@link Figure#EXIT_HEADROOM}.
 *
 * <p>Source: the rule set of the brief. Published value for buildings: 29 CFR 1910.36(g)(1), 7 ft 6 in (2.3 m). Figure:
 * {@link Figure#EXIT_CEILING}.
 */
final class ExitCeiling extends NamedLimit implements Limit.OfWhole {
    ExitCeiling() {
        super(
                "access.exit-ceiling",
                Subject.ACCESS,
                "Height of ways out",
                Severity.HARD,
                Source.commonPractice("People walk out upright"),
                "No rule set sets a height of the roof over ways out.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        Optional<Rule> rule = scene.rules().rule(Figure.EXIT_CEILING);
        if (rule.isEmpty()) {
            return;
        }
        int needed = Floor.micrometres(rule.get().value());
        int there = scene.body().inside().z();
        RowDraft draft = rows.draft(this).source(rule.get().source());
        if (there < needed) {
            draft.mend("Use a body that is at least " + Wording.mm(needed - there) + " higher.");
        }
        rows.add(draft.atLeast(needed / 1e3, there / 1e3, "mm", "The body is " + Wording.mm(there) + " high inside."));
    }
}
