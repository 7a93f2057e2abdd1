package org.shelterwright.app.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.terminal.TextTable;
import org.shelterwright.app.cli.terminal.TextTable.Column;
import org.shelterwright.layouts.asbuilt.AsBuilt;
import org.shelterwright.layouts.asbuilt.Balance;
import org.shelterwright.layouts.asbuilt.Prediction;
import org.shelterwright.layouts.asbuilt.Reconciliation;

/** What was built and weighed, in plain text. */
public final class WeighText {
    private WeighText() {}

    /** Gives deviations and gaps, then the weighing against the prediction. */
    public static List<String> lines(
            String name, @Nullable AsBuilt built, @Nullable Prediction prediction, @Nullable Reconciliation found) {
        List<String> lines = new ArrayList<>();
        if (built != null) {
            built(name, built, lines);
        }
        if (prediction != null && found != null) {
            if (!lines.isEmpty()) {
                lines.add("");
            }
            weighed(name, prediction, found, lines);
        }
        return lines;
    }

    private static void built(String name, AsBuilt built, List<String> lines) {
        long off = built.deviations().stream().filter(one -> !one.within()).count();
        lines.add(name + ", as built: "
                + (built.complete()
                        ? "all signed and within tolerance."
                        : built.open().size() + " open, " + off + " out of tolerance, "
                                + built.voided().size() + " void."));
        built.deviations().stream()
                .filter(one -> !one.within())
                .forEach(one -> lines.add("  " + AsBuilt.sentence(one)));
        built.voided().forEach(one -> lines.add("  " + one));
        built.open().forEach(one -> lines.add("  " + one));
        if (!built.wrenches().isEmpty()) {
            lines.add("  Tightened with: " + String.join("; ", built.wrenches()) + ".");
        }
        double most = built.deviations().stream()
                .filter(one -> one.check().unit().equals("mm"))
                .mapToDouble(one -> Math.abs(one.off()))
                .max()
                .orElse(0);
        lines.add("  Largest deviation of a position: " + figure(most, 1) + " mm.");
    }

    private static void weighed(String name, Prediction prediction, Reconciliation found, List<String> lines) {
        lines.add(name + ", weighed: "
                + (found.differs() ? "not as predicted." : "as predicted, within the ranges of both."));
        TextTable table = new TextTable(
                Column.text(""),
                Column.figures("mass kg"),
                Column.figures("x mm"),
                Column.figures("y mm"),
                Column.figures("z mm"));
        row(table, "weighed", found.weighed());
        row(table, "predicted", found.predicted());
        lines.addAll(table.lines());
        prediction.missing().forEach(one -> lines.add("Not assessed: " + one + " is not known."));
        Balance unlisted = found.unlisted();
        if (unlisted != null) {
            lines.add((unlisted.kg() > 0 ? "Not on any list: " : "Listed, but not there: ")
                    + range(Math.abs(unlisted.kg()), unlisted.kgRange(), 1) + " kg. If it is one thing, it is at x "
                    + range(1000 * unlisted.xM(), 1000 * unlisted.xRangeM(), 0) + " mm, y "
                    + range(1000 * unlisted.yM(), 1000 * unlisted.yRangeM(), 0) + " mm.");
            lines.add("Near there: "
                    + String.join(
                            ", ", found.near().stream().map(part -> part.name()).toList()) + ".");
        }
        if (!found.corrections().isEmpty()) {
            lines.add("The least changes of masses that explain the scales:");
            TextTable changes = new TextTable(Column.figures("kg"), Column.text("of"));
            found.corrections()
                    .forEach(one -> changes.row(
                            (one.kg() > 0 ? "+" : "") + figure(one.kg(), 1),
                            one.part().name()));
            lines.addAll(changes.lines());
        }
    }

    private static void row(TextTable table, String name, Balance balance) {
        Double z = balance.zM();
        table.row(
                name,
                range(balance.kg(), balance.kgRange(), 1),
                range(1000 * balance.xM(), 1000 * balance.xRangeM(), 0),
                range(1000 * balance.yM(), 1000 * balance.yRangeM(), 0),
                z == null ? "" : range(1000 * z, 1000 * balance.zRangeM(), 0));
    }

    private static String range(double value, double range, int decimals) {
        return figure(value, decimals) + " ± " + figure(range, decimals);
    }

    private static String figure(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
