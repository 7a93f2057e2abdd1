package org.shelterwright.layouts.ledger.access;

import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.scene.Scene;

/**
 * Every exit of the body is wide enough: clear width along its wall, or the lesser extent in a roof or floor &gt;= the
 * width of a way out. One row for each exit.
 *
 * <p>Source: the rule set of the brief. Published value for buildings: 29 CFR 1910.36(g)(2), 28 in (711 mm). Figure:
 * {@link Figure#EXIT_WIDTH}.
 */
final class ExitSize extends NamedLimit implements Limit.OfWhole {
    ExitSize() {
        super(
                "access.exit-size",
                Subject.ACCESS,
                "Width of exits",
                Severity.HARD,
                Source.commonPractice("A person fits through an exit"),
                "The body has no exit.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        Optional<Rule> width = scene.rules().rule(Figure.EXIT_WIDTH);
        List<Opening> exits =
                scene.body().openings().stream().filter(Opening::exit).toList();
        if (width.isEmpty()) {
            rows.add(UnsetFigure.row(rows, this, Figure.EXIT_WIDTH));
        } else if (exits.isEmpty()) {
            rows.add(rows.draft(this)
                    .mend("Mark which openings of the body are exits.")
                    .notAssessed("The body states no exit."));
        } else {
            exits.forEach(exit -> assess(rows, exit, width.get()));
        }
    }

    private void assess(Rows rows, Opening exit, Rule width) {
        int needed = Floor.micrometres(width.value());
        int there = WayIn.clearWidth(exit);
        RowDraft draft =
                rows.draft(this, "Width of " + exit.name()).place(exit.area()).source(width.source());
        if (there < needed) {
            draft.mend("Widen it by " + Wording.mm(needed - there) + ", or use another body.");
        }
        rows.add(draft.atLeast(
                needed / 1e3, there / 1e3, "mm", "The exit " + exit.name() + " is " + Wording.mm(there) + " wide."));
    }
}
