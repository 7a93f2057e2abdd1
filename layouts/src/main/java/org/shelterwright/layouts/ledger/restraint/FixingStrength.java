package org.shelterwright.layouts.ledger.restraint;

import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.Scene;

/**
 * The fixings of a bolted unit hold it, and all that it carries, on the road: of every bolt {@code √((T/T₀)² + (V/V₀)²) ≤ 1} and
 * of what takes it {@code T/T₁ + V/V₁ ≤ 1}, with pull T and shear V after {@link
 * org.shelterwright.layouts.ledger.restraint.group.FlatGroup}, in every direction of every load case. T₀ is the proof load, or
 * the ultimate load where the case only asks that nothing comes off (ISO 898-1); V₀ = 0.6 T₀ of classes 4.6, 5.6 and 8.8, and 0.5 T₀ of all
 * others (EN 1993-1-8, table 3.4, from memory). One row for each unit; the worst fixing, case and direction are named.
 */
final class FixingStrength extends NamedLimit implements Limit.OfTotals {
    private final Fasteners fasteners;

    FixingStrength(Fasteners fasteners) {
        super(
                "restraint.fixing",
                Subject.RESTRAINT,
                "Fixings",
                Severity.HARD,
                Source.quoted("ISO 898-1", "proof and ultimate loads of bolts; strengths of hard points as stated"),
                "No unit is bolted.");
        this.fasteners = fasteners;
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        Holdings holdings = Holdings.of(scene, fasteners);
        if (holdings.pushes().isEmpty()) {
            rows.add(NoLoadCase.row(rows, this));
            return;
        }
        for (Holding holding : holdings.all()) {
            rows.add(row(rows, holding));
        }
    }

    private Row row(Rows rows, Holding holding) {
        RowDraft draft = rows.draft(this, "Fixings of " + holding.unit().name())
                .units(holding.unit())
                .place(holding.unit().outline(Situation.ON_THE_ROAD));
        Solved solved = holding.solved();
        if (solved == null) {
            String text =
                    Wording.list(holding.missing()) + (holding.missing().size() == 1 ? " is" : " are") + " not stated.";
            return draft.mend("State it in the catalog, or correct the place.")
                    .notAssessed(Character.toUpperCase(text.charAt(0)) + text.substring(1));
        }
        Push unheld = solved.unheld();
        Strain worst = solved.worst();
        if (unheld != null || worst == null) {
            String push = unheld == null ? "" : unheld.text();
            return draft.state(push)
                    .mend(mend(holding))
                    .atMost(
                            1,
                            0,
                            "share",
                            "The fixings of " + holding.unit().name() + " cannot hold it under " + push
                                    + ": no pull, shear and pressure balance the load.");
        }
        if (worst.use() > 1) {
            draft.mend(mend(holding));
        }
        return draft.state(worst.push().text())
                .source(worst.push().loadCase().source())
                .atMost(worst.use(), 1, "share", holding.finding());
    }

    private static String mend(Holding holding) {
        Change change = holding.mend();
        return change != null
                ? change.sentence()
                : "Use stronger hard points, spread the fixings wider, or brace "
                        + holding.unit().name() + " to a wall.";
    }
}
