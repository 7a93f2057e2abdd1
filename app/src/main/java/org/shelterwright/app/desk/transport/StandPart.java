package org.shelterwright.app.desk.transport;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.entry.Entry;
import org.shelterwright.app.desk.style.Icon;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.Shape;

/** The selected piece in figures: its car, its place, its pin, and what holds it. With nothing selected, the car. */
final class StandPart {
    private final StandSheet sheet;
    private final HoldRows holds;
    private final CarRows car;
    private final Map<Axis, Entry> places = new EnumMap<>(Axis.class);
    private final ChoiceBox<Load> on = new ChoiceBox<>();
    private final Label name = new Label();
    private final Label facts = new Label();
    private final Label fault = new Label();
    private final HBox orders = new HBox(4);
    private final VBox rows = new VBox(6);
    private final VBox ofPiece;
    private final ScrollPane node = new ScrollPane();
    private final Button pin;
    private boolean showing;

    StandPart(JourneySession session, Commands commands) {
        sheet = new StandSheet(session);
        holds = new HoldRows(session, commands);
        car = new CarRows(session);
        name.getStyleClass().add("title");
        name.setWrapText(true);
        facts.getStyleClass().add("second");
        facts.setWrapText(true);
        fault.getStyleClass().addAll("caption", "broken");
        fault.setWrapText(true);
        pin = order(commands, "journey.pin", Icon.PIN);
        orders.getChildren()
                .addAll(
                        order(commands, "journey.turn", Icon.TURN),
                        pin,
                        order(commands, "journey.take-off", Icon.TAKE_OUT),
                        order(commands, "journey.show-piece", Icon.FIND));
        for (Axis axis : Axis.values()) {
            String letter = axis.name().toLowerCase(Locale.ROOT);
            Entry entry =
                    new Entry(letter + " of its rear right corner on the car", text -> sheet.setPlace(axis, text));
            entry.field().setId("stand-" + letter);
            places.put(axis, entry);
            rows.getChildren().addAll(row(letter, entry.field(), caption("mm")), entry.below());
        }
        on.setId("stand-on");
        on.setAccessibleText("On which car");
        on.setMaxWidth(Double.MAX_VALUE);
        on.setConverter(new StringConverter<>() {
            @Override
            public String toString(@Nullable Load load) {
                return load == null ? "no car" : load.name();
            }

            @Override
            public @Nullable Load fromString(String text) {
                return null;
            }
        });
        on.setOnAction(event -> takeLoad());
        HBox.setHgrow(on, Priority.ALWAYS);
        ofPiece = new VBox(8, orders, row("on", on), fault, caption("Place of its rear right bottom corner"), rows);
        VBox body = new VBox(10, new VBox(1, name, facts), ofPiece, car.node(), holds.node());
        body.setPadding(new Insets(10, 18, 14, 18));
        node.setContent(body);
        node.setFitToWidth(true);
        node.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        node.getStyleClass().add("column");
        session.standing().addListener((observable, before, now) -> show(session));
        session.focus().addListener((observable, before, now) -> show(session));
        show(session);
    }

    Region node() {
        return node;
    }

    StandSheet sheet() {
        return sheet;
    }

    private void show(JourneySession session) {
        showing = true;
        Optional<Shape> shape = sheet.shape();
        Optional<PlacedLoad> load = session.load();
        name.setText(shape.map(Shape::name).orElse(load.map(PlacedLoad::name).orElse("No car goes on this leg")));
        facts.setText(shape.map(StandPart::facts)
                .orElse(load.map(one -> one.car().name()).orElse("What goes on it goes on its own wheels.")));
        show(ofPiece, shape.isPresent());
        boolean placed = sheet.placed().isPresent();
        places.forEach((axis, entry) -> {
            entry.show(sheet.place(axis));
            entry.field().setDisable(!placed);
        });
        pin.getStyleClass().remove("selected");
        if (sheet.pinned()) {
            pin.getStyleClass().add("selected");
        }
        on.getItems().setAll(sheet.loads());
        on.setValue(sheet.under().map(PlacedLoad::load).orElse(null));
        fault.setText("");
        show(fault, false);
        car.show();
        show(car.node(), shape.isEmpty() && load.isPresent());
        holds.show();
        show(holds.node(), load.isPresent());
        showing = false;
    }

    private static String facts(Shape shape) {
        Double kg = shape.massKg();
        return (kg == null ? "mass not known" : Numerals.of(kg, 0) + Numerals.GAP + "kg") + ", "
                + Numerals.mm(shape.size().x()) + " x "
                + Numerals.mm(shape.size().y()) + " x "
                + Numerals.mm(shape.size().z()) + Numerals.GAP + "mm";
    }

    private void takeLoad() {
        Load chosen = on.getValue();
        boolean same = sheet.under()
                .map(load -> chosen != null && load.id().equals(chosen.id()))
                .orElse(false);
        if (showing || chosen == null || same) {
            return;
        }
        sheet.putOn(chosen.id()).ifPresent(sentence -> {
            fault.setText(sentence);
            show(fault, true);
        });
    }

    private static Button order(Commands commands, String id, Icon icon) {
        Button button = new Button(null, icon.node(20));
        button.setId(id.replace('.', '-'));
        button.getStyleClass().add("bare");
        button.setOnAction(event -> commands.run(id));
        String words = commands.byId(id).map(Command::name).orElse(id);
        button.setAccessibleText(words);
        button.setTooltip(new Tooltip(words));
        return button;
    }

    static void show(Node node, boolean shown) {
        node.setVisible(shown);
        node.setManaged(shown);
    }

    static HBox row(String label, Node... cells) {
        Label named = caption(label);
        named.setMinWidth(34);
        HBox row = new HBox(6, named);
        row.getChildren().addAll(List.of(cells));
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    static Label caption(String text) {
        Label label = new Label(text);
        label.getStyleClass().add("caption");
        label.setMinWidth(Region.USE_PREF_SIZE);
        return label;
    }
}
