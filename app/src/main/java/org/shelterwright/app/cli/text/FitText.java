package org.shelterwright.app.cli.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shelterwright.app.cli.terminal.Shown;
import org.shelterwright.app.cli.terminal.TextTable;
import org.shelterwright.app.cli.terminal.TextTable.Column;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.solver.fit.FitOption;
import org.shelterwright.solver.fit.FitResult;
import org.shelterwright.solver.fit.WhyNot;

/** What a search found, in plain text. */
public final class FitText {
    private static final int WORST_ROWS = 8;

    private FitText() {}

    /**
     * Gives the result in short: the ledger of the best layout, then the alternatives, then why nothing holds.
     *
     * @param files names of the files of the options, in their order
     */
    public static List<String> lines(String name, FitResult result, List<String> files) {
        List<String> lines = new ArrayList<>();
        if (result.options().isEmpty()) {
            lines.add(name + ": no place was found for anything.");
        } else {
            ledger(name, result.options().get(0), lines);
        }
        if (result.options().size() > 1) {
            lines.add("");
            lines.addAll(alternatives(result.options(), files));
        }
        WhyNot whyNot = result.whyNot();
        if (whyNot != null) {
            lines.add("");
            lines.addAll(reasons(whyNot));
        }
        return lines;
    }

    private static void ledger(String name, FitOption best, List<String> lines) {
        Ledger ledger = best.ledger();
        lines.add(LedgerText.headline(name, ledger));
        lines.add("");
        lines.addAll(LedgerText.subjects(ledger));
        List<Row> open = ledger.rows().stream()
                .filter(row -> row.verdict() != Verdict.MET)
                .toList();
        if (!open.isEmpty()) {
            lines.add("");
            lines.addAll(LedgerText.rows(open.subList(0, Math.min(WORST_ROWS, open.size())), best.layout(), false));
        }
        if (open.size() > WORST_ROWS) {
            lines.add((open.size() - WORST_ROWS)
                    + " more rows are broken, close or not assessed: see them with shelterwright check.");
        }
    }

    private static List<String> alternatives(List<FitOption> options, List<String> files) {
        TextTable table = new TextTable(
                Column.text("Layout"),
                Column.figures("broken"),
                Column.figures("close"),
                Column.figures("not assessed"),
                Column.figures("wishes"),
                Column.text("tightest"));
        for (int i = 0; i < options.size(); i++) {
            Ledger ledger = options.get(i).ledger();
            table.row(
                    files.get(i),
                    Long.toString(ledger.count(Verdict.BROKEN)),
                    Long.toString(ledger.count(Verdict.CLOSE)),
                    Long.toString(ledger.count(Verdict.NOT_ASSESSED)),
                    Long.toString(options.get(i).score().soft()),
                    tightest(ledger));
        }
        return table.lines();
    }

    private static String tightest(Ledger ledger) {
        return ledger.rows().stream()
                .filter(row -> use(row) > 0)
                .max(Comparator.comparingDouble(FitText::use))
                .map(row -> row.title() + ", " + Shown.use(row.use()))
                .orElse("-");
    }

    private static double use(Row row) {
        Double use = row.use();
        return use == null ? 0 : use;
    }

    private static List<String> reasons(WhyNot whyNot) {
        List<String> lines = new ArrayList<>();
        lines.add(whyNot.proven() ? "No layout can hold every limit:" : "No layout was found that holds every limit:");
        whyNot.reasons().forEach(reason -> lines.add("  - " + reason));
        if (!whyNot.relaxations().isEmpty()) {
            lines.add("It would hold if one of these were relaxed:");
            whyNot.relaxations().forEach(relaxation -> lines.add("  - " + relaxation));
        }
        return lines;
    }
}
