package org.shelterwright.app.desk.unit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import javafx.beans.property.ObjectProperty;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.entry.Entry;
import org.shelterwright.app.desk.hand.LengthUnit;
import org.shelterwright.app.desk.hand.order.Orders;
import org.shelterwright.app.desk.menu.Reach;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.layouts.scene.PlacedUnit;

/** The selected units in figures. Adds the orders of editing by hand to the commands. */
public final class UnitPart {
    private static final String SECOND = "second";

    private final Session session;
    private final UnitSheet sheet;
    private final OrderButtons buttons;
    private final DistanceRows distances;
    private final TurnRow turn;
    private final Map<Axis, Entry> places = new EnumMap<>(Axis.class);
    private final ChoiceBox<MountChoice> mount = new ChoiceBox<>();
    private final Label mountFault = new Label();
    private final Label name = new Label();
    private final Label item = new Label();
    private final Label nothing = new Label();
    private final VBox mass = new VBox(2);
    private final VBox fixings = new VBox(2);
    private final Label road = new Label();
    private final VBox body = new VBox(10);
    private final ScrollPane node = new ScrollPane();
    private boolean showing;

    /** @param reach of the commands, to which orders are added */
    public UnitPart(Session session, Reach reach) {
        this.session = session;
        Orders orders = new Orders(session);
        reach.commands().addAll(orders.commands());
        sheet = new UnitSheet(session);
        buttons = new OrderButtons(session, reach);
        distances = new DistanceRows(sheet);
        turn = new TurnRow(sheet, buttons);
        compose(orders);
        session.standing().addListener((observable, before, now) -> show());
        session.selection().units().addListener((observable, before, now) -> show());
        session.situation().addListener((observable, before, now) -> show());
        sheet.unit().addListener((observable, before, now) -> show());
        show();
    }

    public Region node() {
        return node;
    }

    /** The unit of lengths that is shown, and that a typed number without a unit has. */
    public ObjectProperty<LengthUnit> lengthUnit() {
        return sheet.unit();
    }

    private void compose(Orders orders) {
        name.getStyleClass().add("title");
        name.setWrapText(true);
        item.getStyleClass().add(SECOND);
        item.setWrapText(true);
        nothing.getStyleClass().add(SECOND);
        nothing.setWrapText(true);
        mountFault.getStyleClass().addAll("caption", "broken");
        mountFault.setWrapText(true);
        road.getStyleClass().add(SECOND);
        VBox rows = new VBox(6);
        for (Axis axis : Axis.values()) {
            String letter = axis.name().toLowerCase(Locale.ROOT);
            Entry entry = new Entry(letter + " from the rear right floor corner", text -> sheet.setPlace(axis, text));
            entry.field().setId("unit-" + letter);
            places.put(axis, entry);
            rows.getChildren()
                    .addAll(
                            row(letter, entry.field(), unitLabel(), buttons.pin("edit.pin-" + letter, axis)),
                            entry.below());
        }
        rows.getChildren().add(turn.node());
        mount.setId("unit-mount");
        mount.setAccessibleText("Mounted on");
        mount.setMaxWidth(Double.MAX_VALUE);
        mount.setOnAction(event -> takeMount());
        HBox.setHgrow(mount, Priority.ALWAYS);
        rows.getChildren().addAll(row("on", mount), mountFault);
        Entry step = new Entry("step of the arrow keys", text -> sheet.setStep(orders.step(), text));
        step.field().setId("unit-step");
        orders.step()
                .addListener((observable, before, now) ->
                        step.show(sheet.unit().get().format(now.intValue())));
        sheet.unit()
                .addListener((observable, before, now) ->
                        step.show(now.format(orders.step().get())));
        step.show(sheet.unit().get().format(orders.step().get()));
        body.getChildren()
                .addAll(
                        new VBox(1, name, item),
                        buttons.node(),
                        caption("Place of its rear right bottom corner"),
                        rows,
                        distances.node(),
                        section("Mass", mass),
                        section("Fixings", fixings),
                        section("On the road", road),
                        row("step", step.field(), unitLabel()),
                        step.below());
        body.setPadding(new Insets(12, 18, 14, 18));
        node.setContent(body);
        node.setFitToWidth(true);
        node.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        node.getStyleClass().add("column");
    }

    private void show() {
        showing = true;
        List<PlacedUnit> units = sheet.units();
        int chosen = session.selection().units().get().size();
        body.getChildren().remove(nothing);
        for (Node child : body.getChildren()) {
            child.setVisible(!units.isEmpty());
            child.setManaged(!units.isEmpty());
        }
        if (units.isEmpty()) {
            nothing.setText(
                    chosen == 0
                            ? "Select a unit to see and type its place."
                            : (chosen == 1 ? "The selected unit is" : "The selected units are")
                                    + " not placed yet. Insert puts " + (chosen == 1 ? "it" : "them")
                                    + " at the nearest free place.");
            body.getChildren().add(0, nothing);
        } else {
            show(units, chosen);
        }
        showing = false;
    }

    private void show(List<PlacedUnit> units, int chosen) {
        PlacedUnit first = units.get(0);
        boolean one = units.size() == 1;
        name.setText(one ? first.name() : units.size() + " units");
        item.setText(
                one
                        ? first.item().name()
                        : chosen > units.size()
                                ? chosen - units.size() + " more are not placed"
                                : "what is typed here goes for all of them; they line up with "
                                        + units.get(units.size() - 1).name() + ", selected last");
        for (Axis axis : Axis.values()) {
            OptionalInt common = sheet.common(axis);
            Entry entry = places.get(axis);
            if (entry != null) {
                entry.show(common.isPresent() ? sheet.unit().get().format(common.getAsInt()) : "");
                entry.prompt(common.isPresent() ? "" : "differ");
            }
        }
        turn.show();
        List<MountChoice> mounts = sheet.mounts();
        if (!mount.getItems().equals(mounts)) {
            mount.getItems().setAll(mounts);
        }
        mount.setValue(sheet.mount().orElse(null));
        mountFault.setText("");
        mountFault.setManaged(false);
        distances.show();
        buttons.show();
        fill(mass, Facts.mass(session.now().scene(), units));
        List<String> bolts = one
                ? Facts.fixings(session.now().scene(), first, sheet.situation())
                : List.of(units.stream()
                                .mapToInt(unit -> unit.item().fixings().size())
                                .sum()
                        + " in all");
        fill(fixings, bolts);
        Set<String> stowed = Set.copyOf(units.stream().map(Facts::road).toList());
        road.setText(stowed.size() == 1 ? stowed.iterator().next() : "differ");
        if (sheet.situation() == Situation.ON_THE_ROAD) {
            road.setText(road.getText() + "; shown here");
        }
    }

    private void takeMount() {
        MountChoice choice = mount.getValue();
        if (showing || choice == null || sheet.mount().filter(choice::equals).isPresent()) {
            return;
        }
        sheet.setMount(choice).ifPresent(sentence -> {
            show();
            mountFault.setText(sentence);
            mountFault.setManaged(true);
        });
    }

    private Label unitLabel() {
        Label label = caption("");
        label.textProperty().bind(sheet.unit().map(LengthUnit::sign));
        label.setMinWidth(24);
        return label;
    }

    static HBox row(String label, Node... cells) {
        Label named = caption(label);
        named.setMinWidth(34);
        List<Node> all = new ArrayList<>(List.of(named));
        all.addAll(List.of(cells));
        HBox row = new HBox(6, all.toArray(Node[]::new));
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    static Label caption(String text) {
        Label label = new Label(text);
        label.getStyleClass().add("caption");
        label.setMinWidth(Region.USE_PREF_SIZE);
        return label;
    }

    private static VBox section(String title, Node content) {
        Label head = new Label(title);
        head.getStyleClass().add("strong");
        return new VBox(2, head, content);
    }

    /** Lines that are the same stay: a drag fills this again at every step. */
    private static void fill(VBox box, List<String> lines) {
        List<String> before = box.getChildren().stream()
                .map(child -> ((Label) child).getText())
                .toList();
        if (before.equals(lines)) {
            return;
        }
        box.getChildren()
                .setAll(lines.stream()
                        .map(line -> {
                            Label label = new Label(line);
                            label.getStyleClass().add(SECOND);
                            label.setWrapText(true);
                            return label;
                        })
                        .toList());
    }
}
