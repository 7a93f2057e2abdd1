package org.shelterwright.app.report;

import java.util.List;
import java.util.Optional;
import org.shelterwright.app.tables.Csv;
import org.shelterwright.app.tables.Table;
import org.shelterwright.app.tables.Xlsx;
import org.shelterwright.layouts.ledger.lifting.LiftPlan;
import org.shelterwright.layouts.ledger.restraint.RestraintSheet;

/** Ledger, mass statement, restraint and lifting: what the limits say. */
final class LimitChapters {
    private LimitChapters() {}

    static void ledger(DocumentSet set, Issue issue, Press press) {
        Table table = LedgerTable.of(issue);
        set.add(
                2,
                "ledger.pdf",
                "Ledger: every limit with demand, capacity, margin and source",
                press.pdf(issue, "Ledger", new LedgerPages(press.typeface(), issue).pages()));
        set.add(2, "ledger.csv", "Ledger as a table", Csv.write(table));
        set.add(2, "ledger.xlsx", "Ledger as a workbook", Xlsx.write(List.of(table)));
    }

    static void masses(DocumentSet set, Issue issue, Press press) {
        Table lines = MassTables.lines(issue.masses());
        Table states = MassTables.states(issue.masses());
        Table axles = MassTables.axles(issue.masses());
        set.add(
                3,
                "mass-statement.pdf",
                "Mass statement: masses, arms, moments, load states, axles, reserves",
                press.pdf(issue, "Mass statement", new MassPages(press.typeface(), issue).pages()));
        set.add(3, "mass-lines.csv", "Mass statement as a table: lines", Csv.write(lines));
        set.add(3, "mass-states.csv", "Mass statement as a table: load states", Csv.write(states));
        set.add(3, "mass-axles.csv", "Mass statement as a table: axles and wheels", Csv.write(axles));
        set.add(3, "mass-statement.xlsx", "Mass statement as a workbook", Xlsx.write(List.of(lines, states, axles)));
    }

    static void restraint(DocumentSet set, Issue issue, Press press) {
        RestraintSheet sheet = RestraintSheet.of(issue.scene());
        Table table = RestraintTable.of(sheet);
        set.add(
                6,
                "restraint.pdf",
                "Restraint sheet: forces on every fixing, margins, torques",
                press.pdf(issue, "Restraint", new RestraintPages(press.typeface(), issue, sheet).pages()));
        set.add(6, "restraint.csv", "Restraint sheet as a table", Csv.write(table));
        set.add(6, "restraint.xlsx", "Restraint sheet as a workbook", Xlsx.write(List.of(table)));
    }

    static void lifting(DocumentSet set, Issue issue, Press press) {
        Optional<LiftPlan> plan = LiftPlan.of(issue.scene());
        Table table = LiftingTable.of(plan);
        set.add(
                6,
                "lifting.pdf",
                "Lifting sheet: sling, legs, eyes, how far the centre of mass may go",
                press.pdf(issue, "Lifting", new LiftingPages(press.typeface(), issue, plan).pages()));
        set.add(6, "lifting.csv", "Lifting sheet as a table", Csv.write(table));
        set.add(6, "lifting.xlsx", "Lifting sheet as a workbook", Xlsx.write(List.of(table)));
    }
}
