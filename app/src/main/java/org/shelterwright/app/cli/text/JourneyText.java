package org.shelterwright.app.cli.text;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.cli.terminal.TextTable;
import org.shelterwright.app.cli.terminal.TextTable.Column;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.transport.JourneyLedger;
import org.shelterwright.layouts.ledger.transport.JourneyLedger.LegLedger;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.scene.JourneyScene;

/** The result of {@code load} of a journey in plain text. */
public final class JourneyText {
    private static final int NAMED = 3;

    private JourneyText() {}

    /** A few by name; of more, the last, which is the car that all are on, and how many. */
    private static String what(JourneyScene scene, List<String> units) {
        if (units.size() <= NAMED) {
            return String.join(", ", units.stream().map(scene.journey()::nameOf).toList());
        }
        return scene.journey().nameOf(units.get(units.size() - 1)) + " and " + (units.size() - 1) + " on it";
    }

    /** The verdict in one line, the table leg by unit, what is on each car, and the sentences of what is not met. */
    public static List<String> lines(JourneyScene scene, JourneyLedger ledger) {
        List<String> lines = new ArrayList<>();
        lines.add(LedgerText.headline(scene.journey().name(), ledger.all()));
        lines.add("");
        TextTable table = new TextTable(
                Column.text("Leg"),
                Column.text("What"),
                Column.text("Verdict"),
                Column.figures("Use"),
                Column.text("Governing"));
        for (JourneyLedger.Group cell : ledger.grouped(scene.legs())) {
            Row row = cell.governing();
            table.row(
                    cell.leg().number() + " " + cell.leg().leg().mode().word(),
                    what(scene, cell.units()),
                    row.verdict().word(),
                    LedgerText.use(row),
                    row.title());
        }
        lines.addAll(table.lines());
        lines.add("");
        for (Load load : scene.journey().loads()) {
            lines.add(load.name() + ": "
                    + (load.stands().isEmpty()
                            ? "empty"
                            : String.join(
                                    ", ",
                                    load.stands().stream()
                                            .map(stand -> scene.journey().nameOf(stand.what()))
                                            .toList()))
                    + (load.lashings().isEmpty() ? "" : "; " + load.lashings().size() + " lashings")
                    + (load.packed() ? "; packed from wall to wall" : ""));
        }
        for (LegLedger leg : ledger.legs()) {
            for (Row row : leg.ledger().rows()) {
                if (row.verdict() == Verdict.BROKEN || row.verdict() == Verdict.NOT_ASSESSED) {
                    lines.add("");
                    lines.add(row.verdict().word() + ", leg " + leg.number() + ": " + row.title());
                    lines.add("    " + row.finding());
                    String mend = row.mend();
                    if (mend != null) {
                        lines.add("    " + mend);
                    }
                    leg.leg()
                            .acceptance(row.limit(), row.units())
                            .ifPresent(accepted -> lines.add("    " + accepted.sentence()));
                    lines.add("    " + LedgerText.source(row));
                }
            }
        }
        return lines;
    }
}
