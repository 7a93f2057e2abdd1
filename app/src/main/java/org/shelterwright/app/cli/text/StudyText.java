package org.shelterwright.app.cli.text;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.terminal.Shown;
import org.shelterwright.app.cli.terminal.TextTable;
import org.shelterwright.app.cli.terminal.TextTable.Column;
import org.shelterwright.app.study.StudyColumn;
import org.shelterwright.layouts.study.SealedStudy;
import org.shelterwright.layouts.study.StudyPlan;
import org.shelterwright.layouts.study.results.RunResult;
import org.shelterwright.solver.study.StudyProgress;

/** Studies in plain text. */
public final class StudyText {
    private StudyText() {}

    /** How many runs a study has, and how that comes. */
    public static List<String> count(SealedStudy study) {
        StudyPlan plan = study.plan();
        List<String> lines = new ArrayList<>();
        String ways = study.study().axes().stream()
                .map(axis -> axis.settings().size() + " (" + axis.id() + ")")
                .collect(Collectors.joining(" x "));
        int seeds = study.study().seedsOrOne().count();
        String product = (ways.isEmpty() ? "" : ways + " x ") + seeds + (seeds == 1 ? " seed" : " seeds");
        lines.add(study.study().name() + ": " + runs(plan.count()) + " of "
                + study.study().moves() + " moves.");
        lines.add("  " + product + (plan.leftOut() == 0 ? "" : ", less " + plan.leftOut() + " left out"));
        return lines;
    }

    /** How far a study is, in one line. */
    public static String progress(StudyProgress progress) {
        Duration toGo = progress.toGo();
        return progress.done() + " of " + runs(progress.total()) + " done in " + time(progress.elapsed())
                + (toGo == null ? "" : ", about " + time(toGo) + " to go");
    }

    /** What came of a study, in short. */
    public static List<String> summary(SealedStudy study, StudyProgress stand, List<RunResult> runs) {
        List<String> lines = new ArrayList<>();
        int left = stand.total() - stand.done();
        lines.add(study.study().name() + ": " + stand.done() + " of " + runs(stand.total()) + " done, "
                + stand.fresh() + " of them now, in " + time(stand.elapsed()) + "."
                + (left == 0 ? "" : " Start again to do the " + left + " left."));
        long held = runs.stream().filter(RunResult::allMet).count();
        long refused = runs.stream().filter(run -> run.refused() != null).count();
        long broken = runs.stream()
                .filter(run -> run.refused() == null && run.counts().broken() > 0)
                .count();
        long open = runs.size() - held - refused - broken;
        lines.add("  " + held + " meet every limit, " + open + " have limits that are not assessed, " + broken
                + " break some, " + refused + " cannot be laid out at all.");
        return lines;
    }

    /** Runs as a table. */
    public static List<String> table(List<RunResult> runs, List<StudyColumn> columns) {
        TextTable table = new TextTable(columns.stream()
                .map(column -> column.figures() ? Column.figures(column.head()) : Column.text(column.head()))
                .toArray(Column[]::new));
        for (RunResult run : runs) {
            table.row(columns.stream()
                    .map(column -> text(column.cell().apply(run)))
                    .toArray(String[]::new));
        }
        return table.lines();
    }

    /** How much is shown. */
    public static String shown(int shown, int done, int total) {
        return (shown == done ? runs(shown) : shown + " of " + runs(done)) + " shown"
                + (done == total ? "." : "; " + (total - done) + " of " + total + " are still to be done.");
    }

    private static String text(@Nullable Object cell) {
        if (cell == null) {
            return "-";
        }
        return cell instanceof Double number ? Shown.figure(number) : cell.toString();
    }

    private static String runs(int count) {
        return count == 1 ? "1 run" : count + " runs";
    }

    /** Such as "2 h 5 min", "3 min 20 s" or "8 s". */
    static String time(Duration duration) {
        long seconds = Math.max(0, Math.round(duration.toMillis() / 1e3));
        if (seconds >= 3600) {
            return seconds / 3600 + " h " + seconds % 3600 / 60 + " min";
        }
        return seconds >= 60 ? seconds / 60 + " min " + seconds % 60 + " s" : seconds + " s";
    }
}
