package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.sheet.Columns;
import org.shelterwright.app.sheet.Columns.Column;
import org.shelterwright.app.sheet.Flow;
import org.shelterwright.app.sheet.SheetSize;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;

/**
 * The ledger as a report: verdict and governing margin, inputs and assumptions, every limit by subject, findings with what
 * would mend them, what was accepted, what is missing, and what is not modelled.
 */
final class LedgerPages {

    private static final List<Column> FIGURES = List.of(
            new Column("Figure set by rule sets and brief", "", 74, false),
            new Column("Value", "", 20, true),
            new Column("Source", "", 81, false));

    private final Typeface typeface;
    private final Issue issue;
    private final Flow flow;
    private final RowBlock block;
    private final RowMarks marks;

    LedgerPages(Typeface typeface, Issue issue) {
        this.typeface = typeface;
        this.issue = issue;
        this.flow = new Flow(
                typeface,
                SheetSize.A4,
                issue.name() + ", ledger",
                "layout " + issue.scene().brief().id(),
                issue.foot());
        this.block = new RowBlock(typeface, issue.scene());
        this.marks = new RowMarks(issue.ledger());
    }

    List<Drawing> pages() {
        verdict();
        inputs();
        limits();
        findings();
        accepted();
        missing();
        notModelled();
        issueOfDocument();
        return flow.pages();
    }

    private void verdict() {
        flow.add(12, top -> block.counts(flow.left(), top + 3, issue.ledger()));
        issue.ledger().rows().stream()
                .filter(row -> !RowText.plain(row))
                .findFirst()
                .ifPresent(row -> flow.paragraph("Governing: " + governing(row), 0, Weight.MEDIUM));
        if (issue.ledger().count(Verdict.NOT_ASSESSED) > 0) {
            flow.paragraph(
                    "Limits that are not assessed lack data. They are not met until the data are given: see \"What is"
                            + " missing\".");
        }
    }

    private String governing(Row row) {
        String units = RowText.units(row, issue.scene());
        String use = RowText.use(row);
        String margin = RowText.margin(row).replace(String.valueOf(Numerals.MINUS), "");
        return row.title() + (units.isEmpty() ? "" : " (" + units + ")") + ", "
                + (row.verdict() == Verdict.BROKEN ? "overstepped by " : "with a margin of ") + margin
                + (use.isEmpty() ? "" : ", use " + use) + ", " + row.state() + ".";
    }

    private void inputs() {
        var brief = issue.scene().brief();
        flow.heading("Inputs and assumptions");
        flow.pair("Brief", brief.name() + " (" + brief.id() + ")");
        flow.pair(
                "Body",
                issue.body().name() + ", inside "
                        + Numerals.mm(issue.body().inside().x()) + " × "
                        + Numerals.mm(issue.body().inside().y()) + " × "
                        + Numerals.mm(issue.body().inside().z()) + " mm");
        issue.scene().carrier().ifPresent(carrier -> flow.pair("Carrier", carrier.name()));
        issue.scene().trailer().ifPresent(trailer -> flow.pair("Trailer", trailer.name()));
        flow.pair(
                "Units",
                issue.scene().units().size() + " placed, "
                        + issue.scene().toPlace().size() + " still to place");
        flow.pair("Crew in the cab", Integer.toString(brief.crew()));
        if (!brief.occupants().isEmpty()) {
            flow.pair("People inside the body", people(brief));
        }
        flow.pair("Rule sets", brief.ruleSets().isEmpty() ? "none" : String.join(", ", brief.ruleSets()));
        flow.gap(3);
        Columns columns = new Columns(typeface, FIGURES);
        columns.head(flow);
        for (Figure figure : Figure.values()) {
            issue.scene().rules().rule(figure).ifPresent(rule -> columns.row(flow, cells(rule), false));
        }
    }

    private static String people(Brief brief) {
        long riding = brief.occupants().stream()
                .filter(one -> one.situation() == Situation.ON_THE_ROAD)
                .count();
        return (brief.occupants().size() - riding) + " at work on station, " + riding + " on the road";
    }

    private static List<String> cells(Rule rule) {
        Figure figure = rule.figure();
        boolean share = figure.unit().equals("share");
        String value = Numerals.short3(share ? rule.value() * 100 : rule.value());
        String unit = share ? "%" : figure.unit();
        return List.of(
                figure.meaning(),
                unit.isEmpty() ? value : value + Numerals.GAP + unit,
                rule.source().text());
    }

    private void limits() {
        double close = issue.scene().rules().valueOr(Figure.CLOSE_SHARE, 0.9);
        for (Subject subject : Subject.values()) {
            List<Row> rows = issue.ledger().rows().stream()
                    .filter(row -> row.subject() == subject)
                    .toList();
            if (!rows.isEmpty()) {
                flow.heading(subject.title());
                block.head(flow);
                RowGroup.of(rows).forEach(group -> block.add(flow, group, marks.of(group), close));
            }
        }
    }

    private void findings() {
        List<Row> rows = issue.ledger().rows().stream()
                .filter(row -> row.verdict() == Verdict.BROKEN || row.verdict() == Verdict.CLOSE)
                .toList();
        flow.heading("Findings, and what would mend them");
        if (rows.isEmpty()) {
            flow.paragraph("None.");
        }
        for (Row row : rows) {
            String mend = row.mend();
            finding(row, mend == null ? row.finding() : row.finding() + " " + mend);
        }
    }

    private void finding(Row row, String sentence) {
        flow.need(12);
        flow.add(Flow.LINE, top -> block.sentenceHead(flow, top, row, marks.of(row)));
        flow.paragraph(sentence, 12, Weight.REGULAR);
        flow.gap(1.6);
    }

    private void accepted() {
        List<Acceptance> acceptances = issue.scene().layout().acceptances();
        flow.heading("Accepted by a person");
        if (acceptances.isEmpty()) {
            flow.paragraph("None.");
        }
        for (Acceptance acceptance : acceptances) {
            List<String> about = new ArrayList<>(acceptance.units());
            about.add(0, acceptance.limit());
            flow.paragraph(String.join(", ", about) + ": " + acceptance.reason() + " (" + acceptance.by() + ", "
                    + acceptance.date() + ")");
        }
    }

    private void missing() {
        List<Row> rows = issue.ledger().rows().stream()
                .filter(row -> row.verdict() == Verdict.NOT_ASSESSED)
                .toList();
        flow.heading("What is missing");
        if (rows.isEmpty()) {
            flow.paragraph("Nothing: every limit could be assessed.");
        }
        rows.forEach(row -> {
            flow.need(2 * Flow.LINE);
            flow.add(0, top -> block.mark(flow, top, marks.of(row)));
            flow.paragraph(row.finding(), 12, Weight.REGULAR);
        });
    }

    private void notModelled() {
        flow.heading("What is not modelled");
        NotModelled.of(issue.ledger()).forEach(flow::paragraph);
    }

    private void issueOfDocument() {
        flow.heading("Issue", 46);
        flow.pair("Made with", issue.madeWith());
        flow.pair("Date of check", issue.particulars().date().toString());
        flow.pair("Owner", issue.particulars().owner());
        flow.pair("Created by", issue.particulars().createdBy());
        flow.pair("Approved by", issue.particulars().approvedBy());
        flow.pair("Revision", issue.particulars().revision());
        flow.gap(3);
        flow.paragraph(Issue.CAUTION, 0, Weight.MEDIUM);
    }
}
