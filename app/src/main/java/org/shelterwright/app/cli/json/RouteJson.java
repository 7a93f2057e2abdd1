package org.shelterwright.app.cli.json;

import java.util.List;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.layout.Run;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.route.RoutePlan;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The result of {@code route} as JSON. */
public final class RouteJson {
    private RouteJson() {}

    /**
     * Gives the result.
     *
     * @param scene of the layout with its routes
     */
    public static String of(ResultHead head, int status, Scene scene, RoutePlan plan, Ledger ledger) {
        ObjectNode root = head.begin()
                .put("status", status)
                .put("id", scene.brief().id())
                .put("name", scene.brief().name())
                .put("cost", plan.cost())
                .put("bound", plan.bound())
                .put("gap", plan.gap());
        ArrayNode wires = root.putArray("wires");
        CableNet.of(scene).wires().forEach(wire -> wires.add(wire(wire)));
        ArrayNode unrouted = root.putArray("unrouted");
        plan.unrouted()
                .forEach(one -> unrouted.addObject().put("wire", one.wire()).put("sentence", one.reason()));
        List<Row> rows = ledger.rows().stream()
                .filter(row -> row.subject() == Subject.CABLES)
                .toList();
        root.set("counts", LedgerJson.counts(ledger));
        root.set("rows", LedgerJson.rows(rows, scene.layout()));
        return JsonText.write(root);
    }

    private static ObjectNode wire(LaidWire wire) {
        Cable cable = wire.cable();
        ObjectNode node = JsonText.object()
                .put("id", wire.wire().id())
                .put("from", wire.wire().from())
                .put("to", wire.wire().to())
                .put("cable", cable == null ? null : cable.id())
                .put(
                        "lengthMm",
                        wire.shape() == null
                                ? null
                                : Double.valueOf(wire.shape().length() / 1e3))
                .put("cutMm", wire.cutLength() < 0 ? null : Double.valueOf(wire.cutLength() / 1e3))
                .put("panel", wire.panel().orElse(null));
        ArrayNode runs = node.putArray("runs");
        if (wire.shape() != null) {
            wire.shape().route().runs().forEach(run -> runs.add(run(run)));
        }
        return node;
    }

    private static ObjectNode run(Run run) {
        ObjectNode node = JsonText.object().put("tray", run.tray()).put("part", run.part());
        ArrayNode path = node.putArray("path");
        for (Point point : run.path()) {
            path.addArray()
                    .add(Lengths.millimetres(point.x()))
                    .add(Lengths.millimetres(point.y()))
                    .add(Lengths.millimetres(point.z()));
        }
        return node;
    }
}
