package org.shelterwright.app.desk.item;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.entry.Entry;
import org.shelterwright.app.desk.style.Icon;
import org.shelterwright.catalog.item.Presence;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.space.Face;

/** The parts of an item of which there may be several: solids, clear zones, fixings. Rows are made anew when their number changes. */
final class LineRows {
    private static final String WHOLE = "Nothing stated: it fills its whole size.";

    private final Supplier<ItemDraft> draft;
    private final Consumer<ItemDraft> taken;
    private final VBox node = new VBox(7);
    private final Map<String, Label> faults = new LinkedHashMap<>();
    private final List<Runnable> refreshers = new ArrayList<>();
    private List<Integer> counts = List.of();

    LineRows(Supplier<ItemDraft> draft, Consumer<ItemDraft> taken) {
        this.draft = draft;
        this.taken = taken;
    }

    Region node() {
        return node;
    }

    void show(ItemReading reading) {
        ItemDraft now = draft.get();
        List<Integer> current =
                List.of(now.solids().size(), now.zones().size(), now.fixings().size());
        if (!current.equals(counts)) {
            counts = current;
            build(now);
        }
        refreshers.forEach(Runnable::run);
        faults.forEach(
                (place, label) -> ItemForm.say(label, reading.fault(place).orElse("")));
    }

    private void build(ItemDraft now) {
        node.getChildren().clear();
        faults.clear();
        refreshers.clear();
        head("Solids", "solids", old -> old.withSolids(added(old.solids(), solid(old))));
        if (now.solids().isEmpty()) {
            node.getChildren().add(ItemForm.caption(WHOLE));
        }
        for (int i = 0; i < now.solids().size(); i++) {
            cuboid(new Row<>("solids", i, ItemDraft::solids, ItemDraft::withSolids));
        }
        head("Clear zones", "zones", old -> old.withZones(added(old.zones(), zone(old))));
        for (int i = 0; i < now.zones().size(); i++) {
            var row = new Row<>("zones", i, ItemDraft::zones, ItemDraft::withZones);
            Purpose purpose = now.zones().get(i).purpose();
            Node choice = Choice.of(
                    "purpose",
                    row.id("purpose"),
                    Purpose.values(),
                    purpose,
                    value -> row.change(line -> line.with(value)));
            cuboid(row, choice);
        }
        head("Fixings", "fixings", old -> old.withFixings(added(old.fixings(), bolt(old))));
        for (int i = 0; i < now.fixings().size(); i++) {
            bolt(
                    new Row<>("fixings", i, ItemDraft::fixings, ItemDraft::withFixings),
                    now.fixings().get(i).face());
        }
    }

    private static <L extends Line.Cuboid<L>> void cuboid(Row<L> row, Node... more) {
        List<Node> first = new ArrayList<>();
        first.add(row.text("name", Line::name, (line, text) -> line.with(text, line.from(), line.to())));
        first.addAll(List.of(more));
        row.add(first.toArray(Node[]::new));
        row.add(
                ItemForm.caption("from"),
                row.text("from", line -> line.from(), (line, text) -> line.with(line.name(), text, line.to())),
                ItemForm.caption("to"),
                row.text("to", line -> line.to(), (line, text) -> line.with(line.name(), line.from(), text)));
        row.end();
    }

    private static void bolt(Row<Line.Bolt> row, Face face) {
        row.add(
                row.text("name", Line.Bolt::name, (b, t) -> new Line.Bolt(t, b.at(), b.face(), b.thread(), b.grade())),
                Choice.of(
                        "face",
                        row.id("face"),
                        Face.values(),
                        face,
                        value -> row.change(b -> new Line.Bolt(b.name(), b.at(), value, b.thread(), b.grade()))));
        row.add(
                row.text("at", Line.Bolt::at, (b, t) -> new Line.Bolt(b.name(), t, b.face(), b.thread(), b.grade())),
                row.text(
                        "thread", Line.Bolt::thread, (b, t) -> new Line.Bolt(b.name(), b.at(), b.face(), t, b.grade())),
                row.text(
                        "grade", Line.Bolt::grade, (b, t) -> new Line.Bolt(b.name(), b.at(), b.face(), b.thread(), t)));
        row.end();
    }

    private void head(String words, String list, UnaryOperator<ItemDraft> more) {
        Label label = ItemForm.section(words);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Button add = new Button("Add", Icon.ADD.node(14));
        add.getStyleClass().add("order");
        add.setId("item-add-" + list);
        add.setAccessibleText("Add to " + words);
        add.setOnAction(event -> taken.accept(more.apply(draft.get())));
        HBox row = new HBox(8, label, gap, add);
        row.setAlignment(Pos.BOTTOM_LEFT);
        Label wrong = ItemForm.caption("");
        wrong.getStyleClass().add("broken");
        faults.put(list, wrong);
        node.getChildren().addAll(row, wrong);
    }

    private static <L> List<L> added(List<L> lines, L one) {
        List<L> more = new ArrayList<>(lines);
        more.add(one);
        return more;
    }

    private static Line.Filled solid(ItemDraft now) {
        return new Line.Filled("part " + (now.solids().size() + 1), "0 0 0", far(now), Presence.ALWAYS);
    }

    private static Line.Kept zone(ItemDraft now) {
        String from = now.text(Figure.DEPTH) + " 0 0";
        String to = now.text(Figure.DEPTH) + "+650 " + now.text(Figure.WIDTH) + " 1900";
        return new Line.Kept("zone " + (now.zones().size() + 1), Purpose.SERVICE, from, to, Presence.ALWAYS);
    }

    private static Line.Bolt bolt(ItemDraft now) {
        return new Line.Bolt("F" + (now.fixings().size() + 1), "50 50 0", Face.BOTTOM, "M10", "8.8");
    }

    private static String far(ItemDraft now) {
        return now.text(Figure.DEPTH) + " " + now.text(Figure.WIDTH) + " " + now.text(Figure.HEIGHT);
    }

    /** The fields of one line. */
    private final class Row<L extends Line> {
        private final String place;
        private final int index;
        private final Function<ItemDraft, List<L>> lines;
        private final BiFunction<ItemDraft, List<L>, ItemDraft> with;
        private final VBox rows = new VBox(3);

        Row(
                String list,
                int index,
                Function<ItemDraft, List<L>> lines,
                BiFunction<ItemDraft, List<L>, ItemDraft> with) {
            this.place = list + "-" + index;
            this.index = index;
            this.lines = lines;
            this.with = with;
        }

        String id(String part) {
            return "item-" + place + "-" + part;
        }

        void change(Function<L, L> change) {
            List<L> changed = new ArrayList<>(lines.apply(draft.get()));
            changed.set(index, change.apply(changed.get(index)));
            taken.accept(with.apply(draft.get(), changed));
        }

        Node text(String part, Function<L, String> shown, BiFunction<L, String, L> change) {
            Entry entry = new Entry(part + " of " + place, typed -> {
                change(line -> change.apply(line, typed.strip()));
                return Optional.empty();
            });
            entry.field().setId(id(part));
            entry.field().setPrefColumnCount(6);
            entry.field().setPromptText(part);
            refreshers.add(() -> entry.show(shown.apply(lines.apply(draft.get()).get(index))));
            HBox.setHgrow(entry.field(), Priority.ALWAYS);
            return entry.field();
        }

        void add(Node... cells) {
            HBox row = new HBox(6, cells);
            row.setAlignment(Pos.CENTER_LEFT);
            rows.getChildren().add(row);
        }

        /** Puts the row into the form, with what is wrong with it, and the order to take it out. */
        void end() {
            Button out = new Button(null, Icon.TAKE_OUT.node(16));
            out.getStyleClass().add("bare");
            out.setId(id("out"));
            out.setAccessibleText("Take out " + place);
            out.setOnAction(event -> {
                List<L> fewer = new ArrayList<>(lines.apply(draft.get()));
                fewer.remove(index);
                taken.accept(with.apply(draft.get(), fewer));
            });
            ((HBox) rows.getChildren().get(0)).getChildren().add(out);
            Label wrong = ItemForm.caption("");
            wrong.getStyleClass().add("broken");
            faults.put(place, wrong);
            rows.getChildren().add(wrong);
            node.getChildren().add(rows);
        }
    }
}
