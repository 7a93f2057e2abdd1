package org.shelterwright.app.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.terminal.TextTable;
import org.shelterwright.app.cli.terminal.TextTable.Column;
import org.shelterwright.app.revision.RevisionWords;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.revision.LimitShift;
import org.shelterwright.layouts.revision.Reuse;
import org.shelterwright.layouts.revision.Revision;
import org.shelterwright.layouts.revision.StepShift;
import org.shelterwright.layouts.revision.UnitShift;
import org.shelterwright.layouts.revision.WireShift;
import org.shelterwright.solver.change.ChangeResult;

/** What differs between two revisions, as text. */
public final class RevisionText {
    private static final int MOST_LIMITS = 15;

    private RevisionText() {}

    /** What a change comes to. */
    public static List<String> change(String name, ChangeResult found, @Nullable Revision fresh) {
        List<String> lines = new ArrayList<>();
        if (found.broken().isEmpty()) {
            lines.add(name + ": "
                    + (found.searches() == 0
                            ? "the changed list fits where everything stands; nothing has to move."
                            : "a change was found that breaks nothing new, after " + found.searches()
                                    + (found.searches() == 1 ? " search." : " searches.")));
        } else {
            lines.add(name + ": no change was found that breaks nothing new; the best breaks "
                    + found.broken().size()
                    + (found.broken().size() == 1 ? " row" : " rows") + ", first: "
                    + found.broken().get(0).finding());
        }
        lines.add("  Kept: " + kept(found.revision().reuse()) + ".");
        if (fresh != null) {
            lines.add("  A fresh fit would keep: " + kept(fresh.reuse()) + "; "
                    + LedgerText.headline("its ledger", fresh.ledgerAfter()));
        }
        lines.add("");
        lines.addAll(lines(found.revision()));
        return lines;
    }

    private static String kept(Reuse reuse) {
        return reuse.holesKept() + " of " + reuse.holes() + " holes (" + percent(reuse.holeShare()) + "), "
                + reuse.cablesKept() + " of " + reuse.cables() + " cables (" + percent(reuse.cableShare()) + "), "
                + reuse.cablesUntouched() + " of them untouched";
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", Math.floor(100 * share + 1e-9));
    }

    /** All that differs. */
    public static List<String> lines(Revision revision) {
        List<String> lines = new ArrayList<>();
        lines.add(LedgerText.headline("Before", revision.ledgerBefore()));
        lines.add(LedgerText.headline("After", revision.ledgerAfter()));
        if (revision.same()) {
            lines.add("Nothing differs.");
            return lines;
        }
        lines.add("Kept: " + kept(revision.reuse()) + ".");
        units(lines, revision);
        wires(lines, revision);
        limits(lines, revision);
        steps(lines, revision);
        lines.add("");
        lines.add("To be issued again:");
        revision.reissues().forEach(one -> lines.add("  " + one.document() + ": " + one.why()));
        return lines;
    }

    private static void units(List<String> lines, Revision revision) {
        TextTable table = new TextTable(
                Column.text("Unit"), Column.text("Moved by x, y, z (mm)"), Column.text("Turned"), Column.figures("kg"));
        for (UnitShift shift : revision.units()) {
            table.row(shift.name(), RevisionWords.moved(shift), shift.turned() ? "yes" : "", RevisionWords.mass(shift));
        }
        add(lines, table);
        if (!revision.reshaped().isEmpty()) {
            lines.add("Of another size or kind: " + String.join(", ", revision.reshaped()) + ".");
        }
    }

    private static void wires(List<String> lines, Revision revision) {
        TextTable table =
                new TextTable(Column.text("Wire"), Column.figures("Cut before (mm)"), Column.figures("Cut now (mm)"));
        for (WireShift shift : revision.wires()) {
            table.row(shift.wire(), RevisionWords.length(shift.first()), RevisionWords.length(shift.second()));
        }
        add(lines, table);
    }

    private static void limits(List<String> lines, Revision revision) {
        TextTable table = new TextTable(Column.text("Before"), Column.text("Now"), Column.text("Check that changes"));
        List<LimitShift> shifts = revision.limits();
        for (LimitShift shift : shifts.subList(0, Math.min(MOST_LIMITS, shifts.size()))) {
            table.row(verdict(shift.first()), verdict(shift.second()), shift.title());
        }
        if (shifts.size() > MOST_LIMITS) {
            table.note("and " + (shifts.size() - MOST_LIMITS) + " more");
        }
        add(lines, table);
    }

    private static void steps(List<String> lines, Revision revision) {
        TextTable table = new TextTable(
                Column.text("Step"), Column.figures("Before"), Column.figures("Now"), Column.text("Work"));
        for (StepShift shift : revision.steps()) {
            table.row(
                    shift.name(),
                    RevisionWords.number(shift.first()),
                    RevisionWords.number(shift.second()),
                    shift.other() ? "differs" : "the same");
        }
        add(lines, table);
    }

    private static void add(List<String> lines, TextTable table) {
        if (!table.empty()) {
            lines.add("");
            lines.addAll(table.lines());
        }
    }

    private static String verdict(@Nullable Row row) {
        return row == null ? "-" : row.verdict().word() + (row.use() == null ? "" : " " + LedgerText.use(row));
    }
}
