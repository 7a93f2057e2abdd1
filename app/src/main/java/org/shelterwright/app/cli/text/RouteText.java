package org.shelterwright.app.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import org.shelterwright.app.cli.terminal.TextTable;
import org.shelterwright.app.cli.terminal.TextTable.Column;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.cable.RouteShape;
import org.shelterwright.layouts.layout.Run;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.route.RoutePlan;

/** What routing found, for people. */
public final class RouteText {
    private RouteText() {}

    /**
     * Gives the lines: each wire, the sums, what is not met.
     *
     * @param scene of the layout with its routes
     */
    public static List<String> lines(Scene scene, RoutePlan plan, Ledger ledger) {
        List<String> lines = new ArrayList<>();
        CableNet net = CableNet.of(scene);
        if (net.wires().isEmpty()) {
            return List.of(scene.brief().name() + ": the brief asks for no wires.");
        }
        lines.add(LedgerText.headline(scene.brief().name(), ledger));
        lines.add("");
        TextTable table =
                new TextTable(Column.text("Wire"), Column.text("Cable"), Column.figures("Cut m"), Column.text("Way"));
        long laid = 0;
        long cut = 0;
        for (LaidWire wire : net.wires()) {
            Cable cable = wire.cable();
            RouteShape shape = wire.shape();
            laid += wire.routed() && shape != null ? shape.length() : 0;
            cut += Math.max(0, wire.cutLength());
            table.row(
                    wire.wire().id(),
                    cable == null ? "-" : cable.id(),
                    wire.cutLength() < 0 ? "-" : metres(wire.cutLength()),
                    shape == null ? "no route" : way(shape));
        }
        lines.addAll(table.lines());
        lines.add("");
        lines.add(metres(laid) + " m laid in the body, " + metres(cut)
                + " m to cut with spare and with what lies outside.");
        lines.add(String.format(
                Locale.ROOT,
                "Laying cost %.2f m of tray, at least %.2f over the same runs: at most %.1f %% above the least.",
                plan.cost(),
                plan.bound(),
                100 * plan.gap()));
        plan.unrouted().forEach(one -> lines.add(one.reason()));
        open(ledger, lines);
        return lines;
    }

    private static void open(Ledger ledger, List<String> lines) {
        List<Row> open = ledger.rows().stream()
                .filter(row -> row.subject() == Subject.CABLES
                        && (row.verdict() == Verdict.BROKEN || row.verdict() == Verdict.NOT_ASSESSED))
                .toList();
        if (!open.isEmpty()) {
            lines.add("");
        }
        open.forEach(row -> lines.add(row.verdict().word() + ": " + row.finding()));
    }

    private static String way(RouteShape shape) {
        String trays = shape.route().runs().stream()
                .map(Run::tray)
                .filter(Objects::nonNull)
                .distinct()
                .collect(Collectors.joining(", "));
        String panel = shape.route().panel();
        return (panel == null ? "" : panel + ", ") + (trays.isEmpty() ? "outside trays" : trays);
    }

    private static String metres(long micrometres) {
        return String.format(Locale.ROOT, "%.2f", micrometres * 1e-6);
    }
}
