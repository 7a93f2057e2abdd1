package org.shelterwright.app.cli.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
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
        List<Row> worst = worst(open);
        if (!worst.isEmpty()) {
            lines.add("");
            lines.addAll(LedgerText.rows(worst, best.layout(), false));
        }
        if (open.size() > worst.size()) {
            lines.add((open.size() - worst.size())
                    + " more rows are broken, close or not assessed: see them with shelterwright check.");
        }
    }

    /** The worst row of each limit, as many as are read at a glance. */
    private static List<Row> worst(List<Row> rows) {
        Set<String> shown = new HashSet<>();
        return rows.stream()
                .filter(row -> shown.add(row.limit()))
                .limit(WORST_ROWS)
                .toList();
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
                .map(row -> row.title() + ", " + LedgerText.use(row))
                .orElse("-");
    }

    private static double use(Row row) {
        Double use = row.use();
        return use == null ? 0 : use;
    }

    private static List<String> reasons(WhyNot whyNot) {
        List<String> lines = new ArrayList<>();
        lines.add(whyNot.proven() ? "No layout can hold every limit:" : "No layout was found that holds every limit:");
        whyNot.reasons().forEach(reason -> item(lines, reason));
        List<String> relaxations = whyNot.relaxations();
        if (!relaxations.isEmpty()) {
            lines.add(
                    relaxations.size() == 1
                            ? "A layout was found that holds if this limit is relaxed:"
                            : "A layout was found that holds if all of these limits are relaxed:");
            relaxations.forEach(relaxation -> item(lines, relaxation));
        }
        return lines;
    }

    private static void item(List<String> lines, String text) {
        List<String> parts = TextTable.wrapped("    " + text, TextTable.WIDTH);
        lines.add("  - " + parts.get(0).strip());
        lines.addAll(parts.subList(1, parts.size()));
    }
}
