package org.shelterwright.app.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.terminal.Shown;
import org.shelterwright.app.cli.terminal.TextTable;
import org.shelterwright.app.cli.terminal.TextTable.Column;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.insight.Odds;
import org.shelterwright.layouts.insight.Reserve;
import org.shelterwright.layouts.insight.RoomLeft;
import org.shelterwright.layouts.insight.UnitGrowth;
import org.shelterwright.layouts.insight.UnitGrowth.Kind;
import org.shelterwright.layouts.insight.UnitGrowth.Way;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.solver.change.GainfulMove;

/** What a layout has to give, as text. */
public final class MarginText {
    private MarginText() {}

    /** What still fits. */
    public static List<String> room(String name, RoomLeft left) {
        List<String> lines = new ArrayList<>();
        lines.add(name + ": what still fits");
        lines.add("");
        lines.add("Largest free cuboid, clear zones kept: " + box(left.anywhere()) + ".");
        lines.add("Largest on the floor that breaks no limit of place: " + box(left.onFloor()) + ".");
        Row breaks = left.breaks();
        if (breaks != null) {
            lines.add("  " + (left.standing() == 1 ? "One larger place" : left.standing() + " larger places")
                    + " would break a limit; the largest of them: " + breaks.finding());
        }
        lines.add("");
        TextTable table = new TextTable(
                Column.figures("Left"),
                Column.figures("Of"),
                Column.text("Unit"),
                Column.text("Subject"),
                Column.text("Of what"));
        for (Reserve reserve : left.reserves()) {
            table.row(
                    Shown.figure(reserve.left()),
                    Shown.figure(reserve.capacity()),
                    reserve.unit(),
                    reserve.subject().title(),
                    reserve.title() + (reserve.state().isEmpty() ? "" : " (" + reserve.state() + ")"));
        }
        lines.addAll(table.lines());
        return lines;
    }

    /** How much units may grow. */
    public static List<String> growth(String name, List<UnitGrowth> units) {
        List<String> lines = new ArrayList<>();
        lines.add(name + ": how much each unit may grow, one way at a time, before a limit breaks");
        lines.add("");
        TextTable table = new TextTable(
                Column.text("Unit"),
                Column.figures("kg"),
                Column.figures("deeper"),
                Column.figures("wider"),
                Column.figures("taller"),
                Column.text("Breaks first (kg; deeper; wider; taller)"));
        for (UnitGrowth unit : units) {
            List<String> breaks = new ArrayList<>();
            for (Kind kind : Kind.values()) {
                breaks.add(unit.way(kind).map(MarginText::breaks).orElse("-"));
            }
            table.row(
                    unit.name(),
                    most(unit, Kind.HEAVIER),
                    most(unit, Kind.DEEPER),
                    most(unit, Kind.WIDER),
                    most(unit, Kind.TALLER),
                    String.join("; ", breaks));
        }
        lines.addAll(table.lines());
        lines.add("");
        lines.add("Sizes in mm. A dash: the mass is not known. \"none\": nothing breaks as far as was looked.");
        return lines;
    }

    /** Which moves gain on a limit. */
    public static List<String> gains(Row before, List<GainfulMove> moves) {
        List<String> lines = new ArrayList<>();
        lines.add(before.title() + ", now " + Shown.use(before.use()) + " used: " + before.finding());
        lines.add("");
        if (moves.isEmpty()) {
            lines.add("No move of one unit eases it without breaking another limit.");
            return lines;
        }
        TextTable table = new TextTable(
                Column.text("Unit"),
                Column.figures("Move (mm)"),
                Column.text("Way"),
                Column.figures("Used then"),
                Column.figures("Left before"),
                Column.figures("Left then"),
                Column.text("Unit of it"));
        for (GainfulMove move : moves) {
            table.row(
                    move.name(),
                    Lengths.format(Math.abs(move.by())),
                    move.way(),
                    Shown.use(move.after().use()),
                    Shown.figure(move.before().margin()),
                    Shown.figure(move.after().margin()),
                    move.after().unit());
        }
        lines.addAll(table.lines());
        return lines;
    }

    /** How likely limits are exceeded. */
    public static List<String> chances(String name, int draws, List<Odds> odds) {
        List<String> lines = new ArrayList<>();
        lines.add(name + ": chance that a limit is exceeded, " + draws + " draws of masses and centres");
        lines.add("");
        TextTable table = new TextTable(
                Column.figures("Chance"),
                Column.figures("95 % range"),
                Column.figures("Closed form"),
                Column.text("Subject"),
                Column.text("Limit"));
        int never = 0;
        for (Odds one : odds) {
            if (one.exceeded() == 0 && one.closedForm() == null) {
                never++;
            } else {
                Double closed = one.closedForm();
                table.row(
                        percent(one.share()),
                        percent(one.low()) + " to " + percent(one.high()),
                        closed == null ? "-" : percent(closed) + (one.exact() ? "" : " (normal)"),
                        one.subject().title(),
                        one.title());
            }
        }
        lines.addAll(table.empty() ? List.of() : table.lines());
        if (never > 0) {
            lines.add("");
            lines.add(never + (never == 1 ? " limit is" : " limits are") + " exceeded in no draw: with 95 % confidence"
                    + " the chance is below "
                    + percent(new Odds(odds.get(0).subject(), "", "", 0, draws, null, false).high())
                    + ".");
        }
        return lines;
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, share != 0 && share < 0.001 ? "%.3f %%" : "%.1f %%", 100 * share);
    }

    private static String most(UnitGrowth unit, Kind kind) {
        return unit.way(kind)
                .map(way -> (way.breaks() == null ? "over " : "") + way.most())
                .orElse("-");
    }

    private static String breaks(Way way) {
        Row row = way.breaks();
        return row == null ? "none" : row.title();
    }

    private static String box(@Nullable Box box) {
        if (box == null) {
            return "none";
        }
        return Lengths.format(box.x1() - box.x0()) + " x " + Lengths.format(box.y1() - box.y0()) + " x "
                + Lengths.format(box.z1() - box.z0()) + " mm (length, width, height), "
                + String.format(Locale.ROOT, "%.2f", box.volumeM3()) + " m³, from " + Lengths.format(box.x0()) + ", "
                + Lengths.format(box.y0()) + ", " + Lengths.format(box.z0());
    }
}
