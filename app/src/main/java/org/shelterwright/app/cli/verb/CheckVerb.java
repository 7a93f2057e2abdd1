package org.shelterwright.app.cli.verb;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.cli.json.CheckJson;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.text.LedgerText;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.app.cli.workshop.Opened;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Answers every limit of a layout. */
@Command(
        name = "check",
        description = "Answer every limit of a layout: demand, capacity, use, verdict and source, the tightest first.",
        footer = {
            "",
            "The status is 0 if every limit is met, 1 if one is broken or not assessed, whichever rows are shown.",
            "",
            "Examples:",
            "  shelterwright check sample:river-post",
            "  shelterwright check river-post/layout.json --subject axles --all",
            "  shelterwright check river-post/layout.json --json > ledger.json"
        })
public final class CheckVerb extends Verb {
    @Parameters(
            paramLabel = "FILE",
            description = {
                "Layout or brief (JSON), or one of the samples",
                "sample:river-post, sample:water-lab, sample:too-much."
            })
    private String file = "";

    @Option(
            names = "--subject",
            paramLabel = "SUBJECT",
            split = ",",
            converter = SubjectName.class,
            completionCandidates = SubjectName.class,
            description = "Show these subjects only: ${COMPLETION-CANDIDATES}.")
    private List<Subject> subjects = new ArrayList<>();

    @Option(
            names = "--all",
            description = "Show every row with its sentence and source, not just the tightest met row of each limit.")
    private boolean all;

    @Mixin
    private final CatalogOption catalog = new CatalogOption();

    public CheckVerb(Workshop workshop, Terminal terminal) {
        super(workshop, terminal);
    }

    @Override
    public String place() {
        return file;
    }

    @Override
    ExitStatus run() {
        Checker checker = workshop().checker().get();
        Opened opened = new Inputs(() -> catalog.over(entries()), checker.ruleSets()).toJudge(file);
        warn(opened.doubts());
        Ledger ledger = checker.check(opened.layout());
        ExitStatus status = status(ledger);
        List<Row> rows = ledger.rows().stream()
                .filter(row -> subjects.isEmpty() || subjects.contains(row.subject()))
                .toList();
        if (json()) {
            terminal().result(CheckJson.of(head(), status.number(), opened.layout(), ledger, rows));
        } else {
            show(opened.layout(), ledger, rows);
        }
        return status;
    }

    private void show(Layout layout, Ledger ledger, List<Row> rows) {
        terminal().result(LedgerText.headline(layout.brief().name(), ledger));
        terminal().result("");
        print(LedgerText.subjects(ledger));
        terminal().result("");
        List<Row> shown = all ? rows : LedgerText.shortened(rows);
        print(LedgerText.rows(shown, layout, all));
        if (shown.size() < rows.size()) {
            terminal().result("");
            terminal().result(leftOut(rows, shown.size()));
        }
    }

    private static String leftOut(List<Row> rows, int shown) {
        long idle = rows.stream().filter(Row::doesNotApply).count();
        long met = rows.size() - shown - idle;
        return (met == 0 ? "" : met + " more rows are met with more to spare")
                + (met == 0 || idle == 0 ? "" : ", and ")
                + (idle == 0 ? "" : idle + (idle == 1 ? " limit does not apply" : " limits do not apply"))
                + ": see them with --all.";
    }
}
