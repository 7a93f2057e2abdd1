package org.shelterwright.app.report;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.report.CutLists.CutList;
import org.shelterwright.app.sheet.Columns;
import org.shelterwright.app.sheet.Columns.Column;
import org.shelterwright.app.sheet.Flow;
import org.shelterwright.app.sheet.SheetSize;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.Fill;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.cable.RouteShape;
import org.shelterwright.layouts.cable.TrayUse;
import org.shelterwright.layouts.cable.WireEnd;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.cables.CableLimits;
import org.shelterwright.solver.route.cut.Cutting;

/** The cable schedule as a report: limits, each wire, what to cut from which drum, how full trays are, what meets at each unit. */
final class CablePages {
    private static final List<Column> SCHEDULE = List.of(
            new Column("Wire", "", 14, false),
            new Column("Cable", "", 34, false),
            new Column("From", "", 52, false),
            new Column("To", "", 52, false),
            new Column("Way", "", 62, false),
            new Column("Laid", "m", 16, true),
            new Column("Cut", "m", 16, true),
            new Column("Bend", "mm", 16, true));

    private static final List<Column> CUTS = List.of(
            new Column("Cable", "", 46, false),
            new Column("Drum", "", 14, true),
            new Column("Pieces", "wire and length in m", 154, false),
            new Column("Cut", "m", 18, true),
            new Column("Left", "m", 18, true));

    private static final List<Column> FILLS = List.of(
            new Column("Tray", "at its fullest section", 52, false),
            new Column("From", "mm", 20, true),
            new Column("To", "mm", 20, true),
            new Column("Cables", "", 16, true),
            new Column("Fill", "%", 16, true),
            new Column("At most", "%", 18, true),
            new Column("Wires", "", 116, false));

    private static final List<Column> CONNECTIONS = List.of(
            new Column("Unit", "", 54, false),
            new Column("Port", "", 32, false),
            new Column("Connector", "", 44, false),
            new Column("Wire", "", 14, false),
            new Column("Cable", "", 36, false),
            new Column("To", "", 70, false));

    private final Issue issue;
    private final Typeface typeface;
    private final Flow flow;
    private final CableNet net;

    CablePages(Typeface typeface, Issue issue) {
        this.issue = issue;
        this.typeface = typeface;
        this.net = CableNet.of(issue.scene());
        this.flow = new Flow(
                typeface,
                SheetSize.A4_LYING,
                issue.name() + ", cable schedule",
                "layout " + issue.scene().brief().id(),
                issue.foot());
    }

    List<Drawing> pages() {
        flow.heading("Limits of cables");
        LimitTable.set(flow, typeface, issue, Subject.CABLES);
        if (!net.wires().isEmpty()) {
            schedule();
            cuts();
            fills();
            connections();
        }
        Closing.set(
                flow,
                issue,
                Subject.CABLES,
                "Cut lengths have spare at both ends and for laying. Breakers, fault currents, earthing as protection and"
                        + " the number of conductors are not in this list. A cable is cut after its way was measured at the body.");
        return flow.pages();
    }

    private void schedule() {
        flow.heading("Cable schedule");
        Columns columns = new Columns(typeface, SCHEDULE);
        columns.head(flow);
        long laid = 0;
        long cut = 0;
        for (LaidWire wire : net.wires()) {
            Cable cable = wire.cable();
            RouteShape shape = wire.shape();
            laid += wire.routed() && shape != null ? shape.length() : 0;
            cut += Math.max(0, wire.cutLength());
            columns.row(
                    flow,
                    List.of(
                            wire.wire().id(),
                            cable == null ? "?" : cable.id(),
                            name(wire.from()),
                            name(wire.to()),
                            shape == null ? "no route" : CableTables.way(wire, shape),
                            wire.routed() && shape != null ? metres(shape.length()) : "?",
                            wire.cutLength() < 0 ? "?" : metres(wire.cutLength()),
                            cable == null || cable.bendRadius() == null
                                    ? "?"
                                    : Numerals.of(cable.bendRadius() / 1000.0, 0)),
                    false);
        }
        columns.row(flow, List.of("All", "", "", "", "", metres(laid), metres(cut), ""), true);
    }

    private void cuts() {
        flow.heading("Cut list by drum");
        Columns columns = new Columns(typeface, CUTS);
        columns.head(flow);
        for (CutList list : CutLists.of(net)) {
            Cutting cutting = list.cutting();
            for (int i = 0; i < cutting.drums().size(); i++) {
                List<Cutting.Piece> pieces = cutting.drums().get(i);
                long sum = Cutting.sum(pieces);
                columns.row(
                        flow,
                        List.of(
                                i == 0 ? list.cable().name() : "",
                                String.valueOf(i + 1),
                                pieces(pieces),
                                metres(sum),
                                list.stated() ? metres(list.drum() - sum) : ""),
                        false);
            }
            if (!cutting.tooLong().isEmpty()) {
                columns.row(
                        flow,
                        List.of(
                                "",
                                "",
                                "longer than a drum: " + pieces(cutting.tooLong()),
                                metres(Cutting.sum(cutting.tooLong())),
                                ""),
                        false);
            }
            String least = cutting.drums().size() == cutting.bound()
                    ? "No fewer will do."
                    : "At least " + cutting.bound() + " are needed.";
            columns.row(
                    flow,
                    List.of(
                            "",
                            String.valueOf(cutting.drums().size()),
                            (cutting.drums().size() == 1 ? "drum" : "drums")
                                    + (list.stated() ? " of " + metres(list.drum()) + " m. " : ". ")
                                    + least,
                            metres(list.length()),
                            ""),
                    true);
        }
    }

    private void fills() {
        flow.heading("Tray fill");
        Columns columns = new Columns(typeface, FILLS);
        columns.head(flow);
        Fill fill = CableLimits.fill(issue.scene());
        for (TrayUse use : net.sheet().fullest(issue.body().trays())) {
            columns.row(
                    flow,
                    List.of(
                            use.name(),
                            Numerals.of(use.from() / 1000.0, 0),
                            Numerals.of(use.to() / 1000.0, 0),
                            String.valueOf(use.wires().size()),
                            Numerals.of(100 * use.share(), 1),
                            Numerals.of(
                                    100
                                            * fill.most(
                                                    use.tray().tray().closed(),
                                                    use.wires().size()),
                                    0),
                            String.join(", ", use.wires())),
                    false);
        }
    }

    private void connections() {
        flow.heading("Connections by unit");
        Columns columns = new Columns(typeface, CONNECTIONS);
        columns.head(flow);
        for (UnitSpec unit : issue.scene().brief().units()) {
            boolean first = true;
            for (LaidWire wire : net.of(unit.id())) {
                first &= !connection(columns, unit, wire, wire.from(), wire.to(), first);
                first &= !connection(columns, unit, wire, wire.to(), wire.from(), first);
            }
        }
    }

    private boolean connection(
            Columns columns,
            UnitSpec unit,
            LaidWire wire,
            @Nullable WireEnd here,
            @Nullable WireEnd there,
            boolean first) {
        UnitSpec owner = here == null ? null : here.unit();
        if (here == null || here.port() == null || owner == null || !owner.id().equals(unit.id())) {
            return false;
        }
        Cable cable = wire.cable();
        columns.row(
                flow,
                List.of(
                        first ? unit.name() : "",
                        here.port().name(),
                        here.port().connector(),
                        wire.wire().id(),
                        cable == null ? "?" : cable.id(),
                        name(there)),
                false);
        return true;
    }

    private static String pieces(List<Cutting.Piece> pieces) {
        return String.join(
                ", ",
                pieces.stream()
                        .map(piece -> piece.wire() + " " + metres(piece.length()))
                        .toList());
    }

    private static String name(@Nullable WireEnd end) {
        return end == null ? "?" : end.name();
    }

    private static String metres(long micrometres) {
        return Numerals.of(micrometres * 1e-6, 2);
    }
}
