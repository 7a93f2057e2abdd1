package org.shelterwright.app.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shelterwright.app.cli.terminal.TextTable;
import org.shelterwright.app.cli.terminal.TextTable.Column;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.layouts.boltdown.Bolting;
import org.shelterwright.layouts.handling.Handling;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.solver.order.FoundOrder;
import org.shelterwright.solver.order.Schedule;

/** An order of bolting down in plain text. */
public final class BoltDownText {
    private BoltDownText() {}

    /** Gives verdict, steps, what stays out and why, and the rows of the ledger on bolting down. */
    public static List<String> lines(
            Layout layout, BoltDownPlan plan, Schedule schedule, FoundOrder found, List<Row> rows) {
        List<String> lines = new ArrayList<>();
        lines.add(LedgerText.headline(layout.brief().name() + ", bolt-down", new Ledger(rows)));
        lines.add(plan.steps().size() + (plan.steps().size() == 1 ? " step, " : " steps, ")
                + time(schedule.lengthMinutes()) + " with " + schedule.fitters()
                + (schedule.fitters() == 1 ? " fitter." : " fitters."));
        lines.add("");
        lines.addAll(steps(plan, found));
        found.stuck().forEach(stuck -> lines.add("Stays out: " + stuck.sentence()));
        found.circles().forEach(circle -> lines.add("Contradiction: " + circle));
        lines.add("");
        lines.addAll(LedgerText.rows(rows, layout, true));
        return lines;
    }

    private static List<String> steps(BoltDownPlan plan, FoundOrder found) {
        TextTable table = new TextTable(
                Column.figures("Step"),
                Column.text("Unit"),
                Column.text("Through"),
                Column.text("Fixings"),
                Column.figures("N·m"),
                Column.text("Moved"),
                Column.figures("min"));
        for (int i = 0; i < plan.steps().size(); i++) {
            BoltDownStep step = plan.steps().get(i);
            Opening opening = step.passage().opening();
            Handling handling = step.handling();
            Bolting first = step.boltings().isEmpty() ? null : step.boltings().get(0);
            Double torque = first == null ? null : first.finalNm();
            table.row(
                    Integer.toString(step.number()),
                    step.unit().name(),
                    opening == null ? (step.passage().free() ? "outside" : "no way") : opening.name(),
                    first == null ? "loose" : first.places().size() + " × " + first.thread(),
                    torque == null ? "" : String.format(Locale.ROOT, "%.0f", torque),
                    handling == null ? "?" : moved(handling),
                    String.format(Locale.ROOT, "%.0f", step.minutes()));
            if (i < found.reasons().size()) {
                table.note("      " + found.reasons().get(i));
            }
        }
        return table.lines();
    }

    private static String moved(Handling handling) {
        return switch (handling.means()) {
            case BY_HAND -> handling.people() == 1 ? "1 person" : handling.people() + " people";
            case TROLLEY -> "trolley";
            case HOIST -> "hoist";
        };
    }

    private static String time(double minutes) {
        long whole = Math.round(minutes);
        return whole < 60
                ? whole + " min"
                : whole / 60 + " h " + String.format(Locale.ROOT, "%02d", whole % 60) + " min";
    }
}
