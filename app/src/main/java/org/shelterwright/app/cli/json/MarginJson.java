package org.shelterwright.app.cli.json;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.insight.Odds;
import org.shelterwright.layouts.insight.Reserve;
import org.shelterwright.layouts.insight.RoomLeft;
import org.shelterwright.layouts.insight.UnitGrowth;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.solver.change.GainfulMove;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What a layout has to give, as JSON. */
public final class MarginJson {
    private MarginJson() {}

    /** What still fits; boxes in mm. */
    public static String room(ResultHead head, int status, Layout layout, RoomLeft left) {
        ObjectNode root = begin(head, status, layout);
        root.set("anywhere", box(left.anywhere()));
        root.set("onFloor", box(left.onFloor()));
        Row breaks = left.breaks();
        root.put("largerBreaks", breaks == null ? null : breaks.limit());
        ArrayNode reserves = root.putArray("reserves");
        for (Reserve one : left.reserves()) {
            reserves.addObject()
                    .put("subject", LedgerJson.id(one.subject()))
                    .put("title", one.title())
                    .put("state", one.state())
                    .put("left", one.left())
                    .put("capacity", one.capacity())
                    .put("unit", one.unit());
        }
        return JsonText.write(root);
    }

    /** How much units may grow. */
    public static String growth(ResultHead head, int status, Layout layout, List<UnitGrowth> units) {
        ObjectNode root = begin(head, status, layout);
        ArrayNode list = root.putArray("units");
        for (UnitGrowth unit : units) {
            ObjectNode node = list.addObject().put("unit", unit.unit()).put("name", unit.name());
            for (UnitGrowth.Way way : unit.ways()) {
                Row breaks = way.breaks();
                node.putObject(way.kind().word())
                        .put("most", way.most())
                        .put("unit", way.kind().unit())
                        .put("breaks", breaks == null ? null : breaks.limit());
            }
        }
        return JsonText.write(root);
    }

    /** Which moves gain on a limit; lengths in mm. */
    public static String gains(ResultHead head, int status, Layout layout, Row before, List<GainfulMove> moves) {
        ObjectNode root = begin(head, status, layout)
                .put("limit", before.limit())
                .put("use", before.use())
                .put("margin", before.margin())
                .put("unit", before.unit());
        ArrayNode list = root.putArray("moves");
        for (GainfulMove move : moves) {
            list.addObject()
                    .put("unit", move.unit())
                    .put("name", move.name())
                    .put("axis", move.axis().name().toLowerCase(Locale.ROOT))
                    .put("by", move.by() / 1000.0)
                    .put("use", move.after().use())
                    .put("margin", move.after().margin());
        }
        return JsonText.write(root);
    }

    /** How likely limits are exceeded. */
    public static String chances(ResultHead head, int status, Layout layout, int draws, long seed, List<Odds> odds) {
        ObjectNode root = begin(head, status, layout).put("draws", draws).put("seed", seed);
        ArrayNode list = root.putArray("limits");
        for (Odds one : odds) {
            list.addObject()
                    .put("limit", one.limit())
                    .put("title", one.title())
                    .put("exceeded", one.exceeded())
                    .put("draws", one.draws())
                    .put("share", one.share())
                    .put("low", one.low())
                    .put("high", one.high())
                    .put("closedForm", one.closedForm())
                    .put("exact", one.exact());
        }
        return JsonText.write(root);
    }

    private static ObjectNode begin(ResultHead head, int status, Layout layout) {
        return head.begin()
                .put("status", status)
                .put("id", layout.brief().id())
                .put("name", layout.brief().name());
    }

    private static @Nullable ObjectNode box(@Nullable Box box) {
        if (box == null) {
            return null;
        }
        ObjectNode node = JsonText.object();
        node.putArray("at").add(box.x0() / 1000.0).add(box.y0() / 1000.0).add(box.z0() / 1000.0);
        node.putArray("size")
                .add((box.x1() - box.x0()) / 1000.0)
                .add((box.y1() - box.y0()) / 1000.0)
                .add((box.z1() - box.z0()) / 1000.0);
        return node.put("volumeM3", box.volumeM3());
    }
}
