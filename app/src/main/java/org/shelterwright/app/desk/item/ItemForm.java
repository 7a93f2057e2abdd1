package org.shelterwright.app.desk.item;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.entry.Entry;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.Material;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.Scene;

/** An item in a form, with its picture. What is wrong stands beside its field; nothing is changed anywhere else. */
public final class ItemForm {
    private static final double NAMED = 150;

    private final ReadOnlyObjectWrapper<ItemReading> reading;
    private final Map<Figure, Entry> entries = new EnumMap<>(Figure.class);
    private final Map<String, Label> faults = new TreeMap<>();
    private final ItemPicture picture;
    private final LineRows lines;
    private final Label doubts = caption("");
    private final VBox node;
    private ItemDraft draft;

    /** @param desk gives body and rules for the picture */
    public ItemForm(Item item, Scene desk, Theme theme) {
        draft = ItemDraft.of(item);
        reading = new ReadOnlyObjectWrapper<>(ItemReading.of(draft));
        picture = new ItemPicture(desk, theme);
        lines = new LineRows(() -> draft, this::take);
        VBox fields = new VBox(7, section("What it is"), figure(Figure.NAME), kinds(), figure(Figure.NOTE));
        fields.getChildren().add(section("Size, with its front along x"));
        Stretch.extents().forEach(one -> fields.getChildren().add(figure(one)));
        fields.getChildren().addAll(section("Mass"), figure(Figure.MASS), bases(), figure(Figure.CENTRE));
        fields.getChildren().addAll(figure(Figure.UNCERTAINTY), figure(Figure.GROWTH), figure(Figure.STACKING));
        fields.getChildren().addAll(section("Mounting"), surfaces(), fault("surfaces"));
        fields.getChildren().addAll(figure(Figure.LOWEST), figure(Figure.HIGHEST), turns(), fault("turns"));
        fields.getChildren().add(lines.node());
        if (!draft.kept().isEmpty()) {
            fields.getChildren().add(caption("Kept as they are: " + Wording.list(draft.kept()) + "."));
        }
        fields.setPadding(new Insets(4, 14, 8, 14));
        ScrollPane scroll = new ScrollPane(fields);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        VBox.setMargin(picture, new Insets(0, 14, 6, 14));
        VBox.setMargin(doubts, new Insets(4, 14, 0, 14));
        node = new VBox(picture, scroll, doubts);
        VBox.setVgrow(node, Priority.ALWAYS);
        show();
    }

    public Region node() {
        return node;
    }

    /** The field that is typed in first. */
    public Node first() {
        return field(Figure.NAME).field();
    }

    /** What comes of what is typed. */
    public ReadOnlyObjectProperty<ItemReading> reading() {
        return reading.getReadOnlyProperty();
    }

    /** Takes a changed draft, unless it makes something wrong at a place that was typed in; gives what is wrong there. */
    private Optional<String> take(ItemDraft changed, String place) {
        ItemReading read = ItemReading.of(changed);
        draft = changed;
        reading.set(read);
        show();
        return read.fault(place);
    }

    private void take(ItemDraft changed) {
        take(changed, "");
    }

    private void show() {
        ItemReading read = reading.get();
        read.item().ifPresent(picture::show);
        entries.forEach((figure, entry) -> entry.show(draft.text(figure), read.fault(figure.id())));
        faults.forEach((place, label) -> say(label, read.fault(place).orElse("")));
        lines.show(read);
        say(doubts, String.join(" ", read.doubts()));
    }

    private Node figure(Figure figure) {
        Entry entry = field(figure);
        HBox row = new HBox(8, named(figure.words()), entry.field());
        if (!figure.unit().isEmpty()) {
            Label unit = caption(figure.unit());
            unit.setMinWidth(24);
            row.getChildren().add(unit);
        }
        row.setAlignment(Pos.CENTER_LEFT);
        return new VBox(3, row, entry.below());
    }

    private Entry field(Figure figure) {
        return entries.computeIfAbsent(figure, key -> {
            Entry entry = new Entry(key.words(), text -> take(Stretch.typed(draft, key, text), key.id()));
            entry.field().setId(key.id());
            if (!key.unit().isEmpty() && key != Figure.DEPTH && key != Figure.WIDTH && key != Figure.HEIGHT) {
                entry.prompt("not known");
            }
            return entry;
        });
    }

    private Node kinds() {
        return new VBox(
                7,
                choice("kind", "item-kind", ItemKind.values(), draft.kind(), value -> take(draft.with(value))),
                choice(
                        "looks like",
                        "item-material",
                        Material.values(),
                        draft.material(),
                        value -> take(draft.with(value))));
    }

    private Node bases() {
        return choice("known by", "item-basis", MassBasis.values(), draft.basis(), value -> take(draft.with(value)));
    }

    private static <E extends Enum<E>> Node choice(String name, String id, E[] values, E now, Consumer<E> taken) {
        HBox row = new HBox(8, named(name), Choice.of(name, id, values, now, taken));
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private Node surfaces() {
        FlowPane boxes = new FlowPane(12, 4);
        for (Surface surface : Surface.values()) {
            String words = Line.words(surface).replace("on unit", "on a unit").replace("under unit", "under a unit");
            boxes.getChildren()
                    .add(check(
                            words,
                            draft.surfaces().contains(surface),
                            on -> take(draft.mounted(
                                    changed(draft.surfaces(), surface, on, Surface.class), draft.loose()))));
        }
        boxes.getChildren()
                .add(check(
                        "loose, stowed on the road", draft.loose(), on -> take(draft.mounted(draft.surfaces(), on))));
        return boxes;
    }

    private Node turns() {
        FlowPane boxes = new FlowPane(12, 4, caption("may be turned by"));
        for (QuarterTurn turn : QuarterTurn.values()) {
            boxes.getChildren()
                    .add(check(
                            turn.degrees() + "°",
                            draft.turns().contains(turn),
                            on -> take(draft.turned(changed(draft.turns(), turn, on, QuarterTurn.class)))));
        }
        return boxes;
    }

    private static CheckBox check(String words, boolean on, Consumer<Boolean> taken) {
        CheckBox box = new CheckBox(words);
        box.setSelected(on);
        box.selectedProperty().addListener((observable, before, now) -> taken.accept(now));
        return box;
    }

    private static <E extends Enum<E>> Set<E> changed(Set<E> before, E one, boolean on, Class<E> type) {
        Set<E> changed = EnumSet.noneOf(type);
        changed.addAll(before);
        if (on) {
            changed.add(one);
        } else {
            changed.remove(one);
        }
        return changed;
    }

    private Node fault(String place) {
        Label label = caption("");
        label.getStyleClass().add("broken");
        faults.put(place, label);
        return label;
    }

    static void say(Label label, String words) {
        label.setText(words);
        label.setVisible(!words.isEmpty());
        label.setManaged(!words.isEmpty());
    }

    static Label section(String words) {
        Label label = new Label(words);
        label.getStyleClass().add("strong");
        label.setPadding(new Insets(8, 0, 0, 0));
        return label;
    }

    static Label named(String words) {
        Label label = new Label(words);
        label.getStyleClass().add("second");
        label.setMinWidth(NAMED);
        label.setPrefWidth(NAMED);
        return label;
    }

    static Label caption(String words) {
        Label label = new Label(words);
        label.getStyleClass().add("caption");
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }
}
