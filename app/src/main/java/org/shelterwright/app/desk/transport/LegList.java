package org.shelterwright.app.desk.transport;

import java.util.Locale;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.style.Sign;
import org.shelterwright.app.desk.style.Theme;

/** The legs of the journey, each with its verdict and what governs it. */
final class LegList {
    private static final double ROW = 66;

    private final JourneySession session;
    private final ListView<LegLine> list = new ListView<>();
    private final Label name = new Label();
    private final VBox node;
    private boolean filling;

    LegList(JourneySession session, Theme theme) {
        this.session = session;
        Label title = new Label("Legs");
        title.getStyleClass().add("title");
        name.getStyleClass().add("second");
        HBox gap = new HBox();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox head = new HBox(8, title, gap, name);
        head.setAlignment(Pos.CENTER_LEFT);
        head.setPadding(new Insets(12, 18, 6, 18));
        list.setId("leg-list");
        list.setAccessibleText("Legs of the journey");
        list.setCellFactory(view -> new Cell(theme));
        list.getSelectionModel().selectedItemProperty().addListener((observable, before, line) -> {
            if (!filling && line != null) {
                session.now().ifPresent(now -> session.look(focus -> focus.onLeg(line.number(), now.scene())));
            }
        });
        node = new VBox(head, list);
        theme.onChange(() -> show(theme));
        session.standing().addListener((observable, before, now) -> show(theme));
        session.focus().addListener((observable, before, now) -> show(theme));
        show(theme);
    }

    Region node() {
        return node;
    }

    private void show(Theme theme) {
        filling = true;
        session.now()
                .ifPresentOrElse(
                        now -> {
                            var lines = LegLine.of(now);
                            if (!list.getItems().equals(lines)) {
                                list.getItems().setAll(lines);
                            }
                            name.setText(lines.size() + (lines.size() == 1 ? " leg" : " legs"));
                        },
                        () -> list.getItems().clear());
        Focus focus = session.focus().get();
        if (focus != null && focus.leg() <= list.getItems().size()) {
            list.getSelectionModel().select(focus.leg() - 1);
        }
        double high = theme.sized(ROW) * Math.min(4, Math.max(1, list.getItems().size())) + 2;
        list.setFixedCellSize(theme.sized(ROW));
        list.setMinHeight(Math.min(high, theme.sized(ROW)));
        list.setPrefHeight(high);
        list.setMaxHeight(high);
        filling = false;
    }

    private static final class Cell extends ListCell<LegLine> {
        private final Sign sign;
        private final Label title = new Label();
        private final Label count = new Label();
        private final Label way = new Label();
        private final Label governing = new Label();
        private final Label figure = new Label();
        private final VBox lines;

        Cell(Theme theme) {
            sign = new Sign(theme, org.shelterwright.layouts.ledger.Verdict.MET);
            title.getStyleClass().add("strong");
            way.getStyleClass().add("second");
            governing.getStyleClass().add("caption");
            figure.getStyleClass().add("figure");
            lines = new VBox(1, row(sign, title, count), way, row(governing, figure));
            setPrefWidth(0);
        }

        private static HBox row(javafx.scene.Node... nodes) {
            HBox row = new HBox(6);
            row.setAlignment(Pos.CENTER_LEFT);
            for (int i = 0; i < nodes.length; i++) {
                if (i == nodes.length - 1) {
                    Region gap = new Region();
                    HBox.setHgrow(gap, Priority.ALWAYS);
                    row.getChildren().add(gap);
                    ((Region) nodes[i]).setMinWidth(USE_PREF_SIZE);
                }
                row.getChildren().add(nodes[i]);
            }
            return row;
        }

        @Override
        protected void updateItem(@Nullable LegLine line, boolean empty) {
            super.updateItem(line, empty);
            setText(null);
            if (empty || line == null) {
                setGraphic(null);
                setAccessibleText(null);
                return;
            }
            sign.show(line.verdict());
            title.setText(line.title());
            count.setText(line.count());
            count.getStyleClass()
                    .setAll(
                            "label",
                            "figure",
                            line.verdict().word().replace(' ', '-').toLowerCase(Locale.ROOT));
            way.setText(line.way());
            governing.setText(line.governing());
            figure.setText(line.figure());
            setGraphic(lines);
            setAccessibleText("Leg " + line.title() + ", " + line.way() + ", " + line.count() + ". Governs: "
                    + line.governing() + ", " + line.figure());
        }
    }
}
