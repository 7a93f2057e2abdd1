package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.report.CutLists.CutList;
import org.shelterwright.app.tables.Table;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.item.Port;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.Fill;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.cable.RouteShape;
import org.shelterwright.layouts.cable.TrayUse;
import org.shelterwright.layouts.cable.WireEnd;
import org.shelterwright.layouts.layout.Run;
import org.shelterwright.layouts.ledger.cables.CableLimits;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.route.cut.Cutting;

/** Cable schedule, cut list, tray fill and connections as tables. */
final class CableTables {
    private CableTables() {}

    static Table schedule(CableNet net) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (LaidWire wire : net.wires()) {
            Cable cable = wire.cable();
            RouteShape shape = wire.shape();
            rows.add(Arrays.asList(
                    wire.wire().id(),
                    cable == null ? wire.wire().type() : cable.id(),
                    cable == null ? null : word(cable.cableClass()),
                    wire.wire().from(),
                    connector(wire.from()),
                    wire.wire().to(),
                    connector(wire.to()),
                    wire.wire().bus(),
                    shape == null ? null : way(wire, shape),
                    shape == null ? null : shape.length() / 1e3,
                    wire.cutLength() < 0 ? null : wire.cutLength() / 1e3,
                    cable == null || cable.bendRadius() == null ? null : cable.bendRadius() / 1e3,
                    wire.gap()));
        }
        return new Table(
                "Cable schedule",
                List.of(
                        "wire",
                        "cable",
                        "class",
                        "from",
                        "connector",
                        "to",
                        "connector at the end",
                        "bus",
                        "way",
                        "laid mm",
                        "cut mm",
                        "bend radius mm",
                        "missing"),
                rows);
    }

    static Table cuts(CableNet net) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (CutList list : CutLists.of(net)) {
            int drum = 1;
            for (List<Cutting.Piece> pieces : list.cutting().drums()) {
                for (Cutting.Piece piece : pieces) {
                    rows.add(cut(list, drum, list.cutting().drums().size(), piece));
                }
                drum++;
            }
            for (Cutting.Piece piece : list.cutting().tooLong()) {
                rows.add(cut(list, null, list.cutting().drums().size(), piece));
            }
        }
        return new Table(
                "Cut list",
                List.of("cable", "drum", "wire", "cut mm", "length on a drum mm", "drums", "drums at least"),
                rows);
    }

    private static List<@Nullable Object> cut(CutList list, @Nullable Integer drum, int drums, Cutting.Piece piece) {
        return Arrays.asList(
                list.cable().id(),
                drum,
                piece.wire(),
                piece.length() / 1e3,
                list.stated() ? Double.valueOf(list.drum() / 1e3) : null,
                drums,
                list.cutting().bound());
    }

    static Table fills(Scene scene, CableNet net) {
        Fill fill = CableLimits.fill(scene);
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (TrayUse use : net.sheet().uses()) {
            rows.add(Arrays.asList(
                    use.name(),
                    use.from() / 1e3,
                    use.to() / 1e3,
                    use.wires().size(),
                    String.join(" ", use.wires()),
                    use.cablesMm2(),
                    use.insideMm2(),
                    use.share(),
                    fill.most(use.tray().tray().closed(), use.wires().size())));
        }
        return new Table(
                "Tray fill",
                List.of(
                        "tray",
                        "from mm",
                        "to mm",
                        "cables",
                        "wires",
                        "cables mm²",
                        "inside mm²",
                        "fill",
                        "fill at most"),
                rows);
    }

    /** Each unit with the ports that are connected: what a fitter makes at one place. */
    static Table connections(Scene scene, CableNet net) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (UnitSpec unit : scene.brief().units()) {
            for (LaidWire wire : net.of(unit.id())) {
                connection(unit, wire, wire.from(), wire.to(), rows);
                connection(unit, wire, wire.to(), wire.from(), rows);
            }
        }
        return new Table("Connections", List.of("unit", "name", "port", "connector", "wire", "cable", "to"), rows);
    }

    private static void connection(
            UnitSpec unit,
            LaidWire wire,
            @Nullable WireEnd here,
            @Nullable WireEnd there,
            List<List<@Nullable Object>> rows) {
        UnitSpec owner = here == null ? null : here.unit();
        Port port = here == null ? null : here.port();
        if (owner != null && port != null && owner.id().equals(unit.id())) {
            Cable cable = wire.cable();
            rows.add(Arrays.asList(
                    unit.id(),
                    unit.name(),
                    port.name(),
                    port.connector(),
                    wire.wire().id(),
                    cable == null ? null : cable.id(),
                    there == null ? null : there.name()));
        }
    }

    /** The trays and the panel that a wire passes, in order. */
    static String way(LaidWire wire, RouteShape shape) {
        String trays = shape.route().runs().stream()
                .map(Run::tray)
                .filter(Objects::nonNull)
                .distinct()
                .collect(Collectors.joining(", "));
        return wire.panel().map(panel -> panel + (trays.isEmpty() ? "" : ", ")).orElse("")
                + (trays.isEmpty() && wire.panel().isEmpty() ? "outside trays" : trays);
    }

    static String word(CableClass of) {
        return of.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static @Nullable String connector(@Nullable WireEnd end) {
        Port port = end == null ? null : end.port();
        return port == null ? null : port.connector();
    }
}
