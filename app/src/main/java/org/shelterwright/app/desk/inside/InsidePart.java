package org.shelterwright.app.desk.inside;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.space.Pointing;
import org.shelterwright.app.desk.style.Icon;
import org.shelterwright.app.desk.style.Sign;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.inside.Held;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.scene.PlacedUnit;

/** The opened inside of a unit, in the place of the view: its drawing, its pieces, and those that have no place yet. */
public final class InsidePart {
    private static final int STEP = 5_000;
    private static final int MOST_FINDINGS = 2;
    private static final double BELOW = 74;

    private final InsideDesk desk;
    private final InsideOrders orders;
    private final InsideFindings findings;
    private final InsideSketch sketch;
    private final PieceLists lists;
    private final Theme theme;
    private final Label title = new Label();
    private final FlowPane places = new FlowPane(6, 4);
    private final VBox below = new VBox(3);
    private final BorderPane node = new BorderPane();

    /** Adds its commands when it is made. */
    public InsidePart(InsideDesk desk, Commands commands, Theme theme) {
        this.desk = desk;
        this.theme = theme;
        orders = new InsideOrders(desk);
        findings = new InsideFindings(desk);
        sketch = new InsideSketch(desk, findings, theme);
        lists = new PieceLists(desk, orders, sketch);
        new InsideCommands(desk, orders, this::takeFocus).addTo(commands);
        compose();
        desk.opened().addListener((observable, before, now) -> show());
        desk.chosen().addListener((observable, before, now) -> show());
        desk.session().standing().addListener((observable, before, now) -> show());
        theme.onChange(this::show);
        show();
    }

    /** Seen only while something is open. */
    public Region node() {
        return node;
    }

    private void takeFocus() {
        sketch.requestFocus();
    }

    private void compose() {
        Button back = new Button("Back to the view", Icon.BACK.node(16));
        back.setId("inside-back");
        back.setMinWidth(Region.USE_PREF_SIZE);
        back.setOnAction(event -> desk.close());
        title.getStyleClass().add("title");
        title.setMinWidth(0);
        HBox head = new HBox(10, back, title);
        head.setAlignment(Pos.CENTER_LEFT);
        VBox top = new VBox(6, head, places);
        top.setPadding(new Insets(10, 14, 8, 14));
        ScrollPane scroll = new ScrollPane(sketch);
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        below.setPadding(new Insets(6, 14, 8, 14));
        node.setTop(top);
        node.setCenter(scroll);
        node.setRight(lists.node());
        node.setBottom(below);
        node.setId("inside");
        node.getStyleClass().addAll("column", Pointing.STEERED);
        node.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    }

    private void show() {
        Inside open = desk.opened().get();
        boolean was = node.isVisible();
        node.setVisible(open != null);
        node.setManaged(open != null);
        PlacedUnit unit = desk.unit().orElse(null);
        if (open == null || unit == null) {
            return;
        }
        title.setText("Inside " + unit.name());
        List<Inside> all = desk.places(open.unit());
        places.getChildren().setAll(all.stream().map(one -> chip(one, open)).toList());
        places.setVisible(all.size() > 1);
        places.setManaged(all.size() > 1);
        lists.show();
        // Of one height however much it says: the drawing must not move below the pointer.
        below.setMinHeight(theme.sized(BELOW));
        below.setMaxHeight(theme.sized(BELOW));
        below.getChildren().setAll(line(findings.words(), findings.broken().isEmpty()));
        findings.broken().stream().limit(MOST_FINDINGS).map(Row::finding).forEach(sentence -> {
            Label text = new Label(sentence);
            text.getStyleClass().add("second");
            below.getChildren().add(text);
        });
        sketch.redraw();
        if (!was) {
            sketch.requestFocus();
        }
    }

    private HBox line(String words, boolean met) {
        Label text = new Label(words);
        text.getStyleClass().add("strong");
        text.setWrapText(true);
        HBox line = new HBox(8, new Sign(theme, met ? Verdict.MET : Verdict.BROKEN), text);
        line.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(text, Priority.ALWAYS);
        return line;
    }

    private ToggleButton chip(Inside one, Inside open) {
        String name = one.place().substring(0, 1).toUpperCase(Locale.ROOT)
                + one.place().substring(1);
        ToggleButton chip = new ToggleButton(name);
        chip.getStyleClass().add("chip");
        chip.setSelected(one.equals(open));
        chip.setOnAction(event -> {
            desk.open(one);
            chip.setSelected(true);
        });
        return chip;
    }

    private void key(KeyEvent event) {
        KeyCode code = event.getCode();
        if (code == KeyCode.ESCAPE) {
            if (!sketch.cancel()) {
                desk.close();
            }
        } else if (sketch.isFocused() && code.isArrowKey()) {
            move(code);
        } else if (sketch.isFocused() && code == KeyCode.K) {
            orders.keepOrLetGo();
        } else if (sketch.isFocused() && code == KeyCode.T) {
            orders.turn();
        } else if (code == KeyCode.DELETE) {
            orders.takeOut();
        } else {
            return;
        }
        event.consume();
    }

    private void move(KeyCode code) {
        Optional<Held> chosen = orders.chosen();
        if (chosen.isEmpty()) {
            return;
        }
        if (chosen.get() instanceof InRack racked) {
            orders.toUnit(racked.lowest() + (code == KeyCode.UP ? 1 : code == KeyCode.DOWN ? -1 : 0));
            return;
        }
        orders.shift(
                switch (code) {
                    case UP -> new Point(-STEP, 0, 0);
                    case DOWN -> new Point(STEP, 0, 0);
                    case LEFT -> new Point(0, -STEP, 0);
                    default -> new Point(0, STEP, 0);
                });
    }
}
