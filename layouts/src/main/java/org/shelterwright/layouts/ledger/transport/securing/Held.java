package org.shelterwright.layouts.ledger.transport.securing;

import java.util.Locale;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/** Everything is held against sliding under every push of the leg; see {@link Hold} for formula and source. */
final class Held extends LegLimit {
    Held() {
        super(
                "held",
                "Held against sliding",
                Source.quoted("EN 12195-1:2010", "sliding: friction, tie-downs, blocks and direct lashings together"),
                "Nothing is carried on this leg, or its rules set no load case.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        if (leg.rules().loadCases().isEmpty()) {
            return;
        }
        for (PlacedLoad load : leg.loads()) {
            for (Holds holds : Holds.withTiers(leg, load)) {
                rows.add(row(leg, holds, rows));
            }
        }
    }

    private Row row(LegScene leg, Holds holds, Rows rows) {
        Bundle bundle = holds.bundle();
        RowDraft draft =
                draft(leg, rows, "Held, " + bundle.title()).units(bundle.ids()).place(bundle.box());
        String missing = holds.missing();
        Hold worst = holds.worst().orElse(null);
        if (missing != null || worst == null) {
            return draft.notAssessed(missing == null ? "No push applies to " + bundle.name() + "." : missing);
        }
        boolean broken = worst.needN() > worst.holdsN();
        return draft.state(leg.state() + ", " + worst.push().text())
                .source(worst.push().loadCase().source())
                .mend(broken ? mend(worst) : null)
                .atMost(worst.needN() / 1000, worst.holdsN() / 1000, "kN", finding(bundle, worst));
    }

    private static String finding(Bundle bundle, Hold hold) {
        return String.format(
                Locale.ROOT,
                "%s pushes with %.1f kN (%s); %s.",
                bundle.name(),
                hold.needN() / 1000,
                hold.push().text(),
                parts(hold));
    }

    static String parts(Hold hold) {
        StringBuilder text = new StringBuilder();
        part(text, "friction", hold.frictionN());
        part(text, "tie-downs", hold.tieDownN());
        part(text, "blocks", hold.blockN());
        part(text, "direct lashings", hold.lashingSum() * hold.weakestN());
        return text.isEmpty() ? "nothing holds it" : text + " hold";
    }

    private static void part(StringBuilder text, String what, double newtons) {
        if (newtons > 0) {
            text.append(text.isEmpty() ? "" : ", ")
                    .append(what)
                    .append(String.format(Locale.ROOT, " %.1f kN", newtons / 1000));
        }
    }

    private static String mend(Hold hold) {
        double lacking = hold.needN() - hold.holdsN();
        return String.format(
                Locale.ROOT,
                "Block it %s or add lashings that pull against it for %.1f kN more, or lay anti-slip mats.",
                hold.push().toward() == Face.TOP ? "down" : "there",
                lacking / 1000);
    }
}
