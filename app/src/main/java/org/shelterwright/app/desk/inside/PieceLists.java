package org.shelterwright.app.desk.inside;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.entry.Entry;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.inside.Held;
import org.shelterwright.layouts.inside.InRack;

/** The pieces in what is open, and those of the brief without a place, which can be drawn into the drawing. */
final class PieceLists {
    private static final double WIDTH = 268;

    private final InsideDesk desk;
    private final InsideOrders orders;
    private final ListView<Held> inside = new ListView<>();
    private final ListView<PieceSpec> toPlace = new ListView<>();
    private final Label without = new Label();
    private final Label refusal = new Label();
    private final Button keep = new Button("Keep");
    private final Button turn = new Button("Turn");
    private final Button takeOut = new Button("Take out");
    private final Entry unit;
    private final Region unitRow;
    private final VBox node = new VBox();
    private final ScrollPane scroll = new ScrollPane(node);
    private boolean following;

    PieceLists(InsideDesk desk, InsideOrders orders, InsideSketch sketch) {
        this.desk = desk;
        this.orders = orders;
        unit = new Entry("lowest height unit", this::takeUnit);
        unit.field().setId("inside-unit");
        unit.field().setPrefColumnCount(3);
        Label letter = new Label("from U");
        letter.getStyleClass().add("caption");
        FlowPane row = new FlowPane(6, 4, letter, unit.field());
        unitRow = new VBox(2, row, unit.below());
        compose(sketch);
    }

    Region node() {
        return scroll;
    }

    void show() {
        following = true;
        boolean racked = desk.bay().isPresent();
        List<Held> held = desk.held().stream()
                .sorted(Comparator.comparingInt((Held one) -> -one.box().z0()))
                .toList();
        if (!inside.getItems().equals(held)) {
            inside.getItems().setAll(held);
        }
        Held chosen = orders.chosen().orElse(null);
        if (chosen == null) {
            inside.getSelectionModel().clearSelection();
        } else {
            inside.getSelectionModel().select(chosen);
        }
        List<PieceSpec> left = desk.toPlace();
        if (!toPlace.getItems().equals(left)) {
            toPlace.getItems().setAll(left);
        }
        without.setText(left.isEmpty() ? "Every piece has a place" : "Without a place: " + left.size());
        keep.setDisable(chosen == null);
        keep.setText(chosen != null && chosen.place().kept() ? "Let go" : "Keep");
        takeOut.setDisable(chosen == null);
        turn.setVisible(!racked);
        turn.setManaged(!racked);
        turn.setDisable(chosen == null);
        unitRow.setVisible(racked);
        unitRow.setManaged(racked);
        unit.field().setDisable(chosen == null);
        unit.show(chosen instanceof InRack in ? String.valueOf(in.lowest()) : "");
        following = false;
    }

    private void compose(InsideSketch sketch) {
        inside.setId("inside-pieces");
        inside.setAccessibleText("Pieces in it");
        inside.setCellFactory(view -> new Cell<>(this::words));
        inside.setPlaceholder(new Label("Nothing is in it."));
        inside.getSelectionModel().selectedItemProperty().addListener((observable, before, held) -> {
            if (!following && held != null) {
                desk.chosen().set(held.id());
            }
        });
        toPlace.setId("inside-to-place");
        toPlace.setAccessibleText("Pieces without a place");
        toPlace.setCellFactory(view -> new Cell<>(this::words));
        toPlace.setPlaceholder(new Label("None."));
        toPlace.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ENTER) {
                putIn();
                event.consume();
            }
        });
        toPlace.setOnDragDetected(event -> {
            PieceSpec spec = toPlace.getSelectionModel().getSelectedItem();
            if (spec != null) {
                sketch.carry(spec.id());
            }
        });
        toPlace.setOnMouseDragged(event -> sketch.to(event.getSceneX(), event.getSceneY()));
        toPlace.setOnMouseReleased(event -> sketch.drop());
        Button put = new Button("Put in");
        put.setId("inside-put-in");
        put.disableProperty()
                .bind(toPlace.getSelectionModel().selectedItemProperty().isNull());
        put.setOnAction(event -> putIn());
        keep.setId("inside-keep");
        keep.setOnAction(event -> orders.keepOrLetGo());
        turn.setOnAction(event -> orders.turn());
        takeOut.setId("inside-take-out");
        takeOut.setOnAction(event -> orders.takeOut());
        refusal.getStyleClass().addAll("caption", "broken");
        refusal.setWrapText(true);
        refusal.setMinHeight(Region.USE_PREF_SIZE);
        refusal.managedProperty().bind(refusal.textProperty().isNotEmpty());
        without.getStyleClass().add("strong");
        without.setWrapText(true);
        without.setMinHeight(Region.USE_PREF_SIZE);
        Label in = new Label("In it");
        in.getStyleClass().add("strong");
        VBox first = new VBox(6, in);
        first.setPadding(new Insets(0, 14, 4, 14));
        VBox middle = new VBox(6, new FlowPane(6, 4, keep, turn, takeOut), unitRow, without);
        middle.setPadding(new Insets(6, 14, 4, 14));
        VBox last = new VBox(4, put, refusal);
        last.setPadding(new Insets(6, 14, 10, 14));
        VBox.setVgrow(inside, Priority.ALWAYS);
        toPlace.setPrefHeight(120);
        toPlace.setMinHeight(56);
        inside.setMinHeight(80);
        node.getChildren().addAll(first, inside, middle, toPlace, last);
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setPrefWidth(WIDTH);
        scroll.setMinWidth(WIDTH);
    }

    private void putIn() {
        PieceSpec spec = toPlace.getSelectionModel().getSelectedItem();
        if (spec != null) {
            refusal.setText(orders.putIn(spec.id()).orElse(""));
        }
    }

    private Optional<String> takeUnit(String text) {
        Held chosen = orders.chosen().orElse(null);
        if (!(chosen instanceof InRack in)) {
            return Optional.empty();
        }
        int most = in.bay().units() - in.mount().units() + 1;
        try {
            int lowest = Integer.parseInt(text.strip());
            if (lowest >= 1 && lowest <= most) {
                orders.toUnit(lowest);
                return Optional.empty();
            }
        } catch (NumberFormatException noNumber) {
            return Optional.of("\"" + text.strip() + "\" is no whole number. Type 1 to " + most + ".");
        }
        return Optional.of("It can begin at U1 to U" + most + ". Type one of these.");
    }

    private String[] words(Held held) {
        Double mass = held.piece().mass().massKg();
        String where = held instanceof InRack in
                ? in.lowest() == in.highest() ? "U" + in.lowest() : "U" + in.lowest() + " to " + in.highest()
                : Numerals.mm(held.box().low().x()) + ", "
                        + Numerals.mm(held.box().low().y()) + ", "
                        + Numerals.mm(held.box().low().z()) + " mm";
        return new String[] {
            held.name(),
            where
                    + (mass == null ? ", mass not stated" : ", " + Numerals.of(mass, 1) + " kg")
                    + (held.place().kept() ? ", kept" : "")
        };
    }

    private String[] words(PieceSpec spec) {
        String kind = desk.kind(spec.id())
                .map(piece ->
                        piece.rack() != null ? "rack-mounted, " + piece.rack().units() + " U" : "loose")
                .orElse("kind not known");
        return new String[] {spec.name(), kind};
    }

    /** A name with a line below it. */
    private static final class Cell<T> extends ListCell<T> {
        private final Function<T, String[]> words;
        private final Label name = new Label();
        private final Label second = new Label();
        private final VBox lines = new VBox(name, second);

        Cell(Function<T, String[]> words) {
            this.words = words;
            second.getStyleClass().add("caption");
            setPrefWidth(0);
        }

        @Override
        protected void updateItem(@Nullable T item, boolean empty) {
            super.updateItem(item, empty);
            setText(null);
            setGraphic(empty || item == null ? null : lines);
            if (!empty && item != null) {
                String[] both = words.apply(item);
                name.setText(both[0]);
                second.setText(both[1]);
                setAccessibleText(both[0] + ", " + both[1]);
            }
        }
    }
}
