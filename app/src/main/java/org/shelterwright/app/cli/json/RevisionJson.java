package org.shelterwright.app.cli.json;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.revision.LimitShift;
import org.shelterwright.layouts.revision.Reuse;
import org.shelterwright.layouts.revision.Revision;
import org.shelterwright.layouts.revision.StepShift;
import org.shelterwright.layouts.revision.UnitShift;
import org.shelterwright.layouts.revision.WireShift;
import org.shelterwright.solver.change.ChangeResult;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What differs between two revisions, as JSON. */
public final class RevisionJson {
    private RevisionJson() {}

    /**
     * Gives the result; lengths in mm.
     *
     * @param found how the change was found; {@code null} if both revisions were given
     * @param fresh the fit from nothing; {@code null} if none was asked for
     */
    public static String of(
            ResultHead head,
            int status,
            Revision revision,
            @Nullable ChangeResult found,
            @Nullable Revision fresh,
            List<String> files) {
        ObjectNode root = head.begin()
                .put("status", status)
                .put("id", revision.after().brief().id())
                .put("name", revision.after().brief().name());
        if (found != null) {
            root.put("searches", found.searches())
                    .put("newlyBroken", found.broken().size());
            ArrayNode loosened = root.putArray("loosened");
            found.loosened().forEach(loosened::add);
        }
        root.set("countsBefore", LedgerJson.counts(revision.ledgerBefore()));
        root.set("counts", LedgerJson.counts(revision.ledgerAfter()));
        root.set("kept", kept(revision.reuse()));
        if (fresh != null) {
            ObjectNode node = root.putObject("fresh");
            node.set("counts", LedgerJson.counts(fresh.ledgerAfter()));
            node.set("kept", kept(fresh.reuse()));
        }
        units(root.putArray("units"), revision.units());
        ArrayNode reshaped = root.putArray("reshaped");
        revision.reshaped().forEach(reshaped::add);
        ArrayNode wires = root.putArray("wires");
        for (WireShift one : revision.wires()) {
            wires.addObject()
                    .put("wire", one.wire())
                    .put("before", mm(one.first()))
                    .put("after", mm(one.second()));
        }
        ArrayNode limits = root.putArray("limits");
        for (LimitShift one : revision.limits()) {
            ObjectNode node = limits.addObject().put("limit", one.limit()).put("title", one.title());
            row(node, "before", one.first());
            row(node, "after", one.second());
        }
        ArrayNode steps = root.putArray("steps");
        for (StepShift one : revision.steps()) {
            steps.addObject()
                    .put("unit", one.name())
                    .put("before", one.first())
                    .put("after", one.second())
                    .put("differs", one.other());
        }
        ArrayNode documents = root.putArray("reissue");
        revision.reissues()
                .forEach(one ->
                        documents.addObject().put("document", one.document()).put("why", one.why()));
        ArrayNode list = root.putArray("files");
        files.forEach(list::add);
        return JsonText.write(root);
    }

    private static ObjectNode kept(Reuse reuse) {
        return JsonText.object()
                .put("holes", reuse.holes())
                .put("holesKept", reuse.holesKept())
                .put("holesNew", reuse.holesNew())
                .put("holeShare", reuse.holeShare())
                .put("cables", reuse.cables())
                .put("cablesKept", reuse.cablesKept())
                .put("cablesUntouched", reuse.cablesUntouched())
                .put("cablesNew", reuse.cablesNew())
                .put("cableShare", reuse.cableShare());
    }

    private static void units(ArrayNode list, List<UnitShift> shifts) {
        for (UnitShift one : shifts) {
            ObjectNode node = list.addObject().put("name", one.name());
            place(node, "before", one.first());
            place(node, "after", one.second());
            node.put("turned", one.turned()).put("heavierKg", one.massKg());
        }
    }

    private static void place(ObjectNode node, String key, @Nullable Point at) {
        if (at == null) {
            node.putNull(key);
        } else {
            node.putArray(key).add(at.x() / 1000.0).add(at.y() / 1000.0).add(at.z() / 1000.0);
        }
    }

    private static void row(ObjectNode node, String key, @Nullable Row row) {
        if (row == null) {
            node.putNull(key);
        } else {
            node.putObject(key).put("verdict", LedgerJson.id(row.verdict())).put("use", row.use());
        }
    }

    private static @Nullable Double mm(@Nullable Long micrometres) {
        return micrometres == null ? null : Double.valueOf(micrometres / 1000.0);
    }
}
