package org.shelterwright.app.journey;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.sheet.Columns;
import org.shelterwright.app.sheet.Columns.Column;
import org.shelterwright.app.sheet.Flow;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.layouts.ledger.transport.securing.Holds;
import org.shelterwright.layouts.ledger.transport.securing.Rope;
import org.shelterwright.layouts.transport.Block;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/** How a load is held, in a load sheet: lashings by key, material, blocks. */
final class LashingTables {
    private static final List<Column> LASHINGS = List.of(
            new Column("Key", "", 12, false),
            new Column("What", "", 37, false),
            new Column("From", "", 52, false),
            new Column("To", "", 22, false),
            new Column("Angle", "°", 13, true),
            new Column("Length", "mm", 17, true),
            new Column("Force", "kN", 11, true),
            new Column("Bears", "kN", 11, true));
    private static final List<Column> MATERIAL = List.of(
            new Column("Material", "", 120, false),
            new Column("Number", "", 25, true),
            new Column("Keys", "", 30, false));

    private final Typeface typeface;
    private final JourneyIssue issue;
    private final LegScene leg;
    private final PlacedLoad load;

    LashingTables(Typeface typeface, JourneyIssue issue, LegScene leg, PlacedLoad load) {
        this.typeface = typeface;
        this.issue = issue;
        this.leg = leg;
        this.load = load;
    }

    void onto(Flow flow) {
        lashings(flow);
        blocks(flow);
    }

    private void lashings(Flow flow) {
        List<Rope> ropes = Rope.of(leg, load);
        if (ropes.isEmpty()) {
            return;
        }
        Map<String, Double> forces = Holds.forces(leg, load);
        flow.heading("Lashings");
        Columns columns = new Columns(typeface, LASHINGS);
        columns.head(flow);
        Map<String, List<String>> material = new LinkedHashMap<>();
        for (Rope rope : ropes) {
            Double force = forces.get(rope.lashing().key());
            String second = rope.lashing().anchor2();
            columns.row(
                    flow,
                    List.of(
                            rope.lashing().key(),
                            issue.names(rope.lashing().what()),
                            rope.direct()
                                    ? String.valueOf(rope.lashing().eye())
                                    : "over, at " + Numerals.mm(rope.top().x()) + ", from "
                                            + rope.lashing().anchor(),
                            rope.direct() ? rope.lashing().anchor() : String.valueOf(second),
                            Numerals.of(rope.angle(), 0),
                            Numerals.of(rope.length() / 1000, 0),
                            force == null ? "?" : Numerals.of(force / 1000, 1),
                            rope.bearsN() == null ? "?" : Numerals.of(rope.bearsN() / 1000, 0)),
                    false);
            material.computeIfAbsent(rope.kind().name(), key -> new ArrayList<>())
                    .add(rope.lashing().key());
        }
        flow.need(12 + 5 * material.size());
        flow.gap(3);
        Columns list = new Columns(typeface, MATERIAL);
        list.head(flow);
        material.forEach((kind, keys) -> list.row(
                flow,
                List.of(kind, Integer.toString(keys.size()), keys.get(0) + " to " + keys.get(keys.size() - 1)),
                false));
        load.load().blocks().stream()
                .filter(block -> block.way() == Block.Way.CHOCKS)
                .forEach(block -> list.row(
                        flow,
                        List.of(
                                "Chocks, one at each wheel and side, " + issue.names(List.of(block.what())),
                                Integer.toString(block.count() * block.toward().size()),
                                ""),
                        false));
    }

    private void blocks(Flow flow) {
        if (load.load().blocks().isEmpty() && !load.load().packed()) {
            return;
        }
        flow.heading("Blocks");
        if (load.load().packed()) {
            flow.paragraph(
                    "Packed from wall to wall: fill every gap with dunnage or air bags so that nothing can stir.");
        }
        Map<String, List<String>> alike = new LinkedHashMap<>();
        load.load()
                .blocks()
                .forEach(block -> alike.computeIfAbsent(words(block), key -> new ArrayList<>())
                        .add(block.what()));
        alike.forEach((words, what) -> flow.paragraph(issue.names(what) + ": " + words + "."));
    }

    private static String words(Block block) {
        return block.way().word() + ", "
                + String.join(
                        ", ",
                        block.toward().stream()
                                .map(face -> face.name().toLowerCase(Locale.ROOT))
                                .toList())
                + (block.way() == Block.Way.STOP || block.way() == Block.Way.SPIGOTS
                        ? ""
                        : ", " + block.count() + " each");
    }
}
