package org.shelterwright.app.desk.bolt;

import java.util.List;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.solver.order.FoundOrder;
import org.shelterwright.solver.order.Stuck;

/** The steps in their order, and the orders that change it. */
final class StepList {
    /** Steps that stay in sight before the one that is looked at. */
    private static final int BEFORE = 6;

    private final BoltDesk desk;
    private final Commands commands;
    private final ListView<StepRow> list = new ListView<>();
    private final Label count = new Label();
    private final Label words = new Label();
    private final Button find = new Button();
    private final ChoiceBox<Integer> fitters = new ChoiceBox<>();
    private final VBox node;
    private boolean following;

    StepList(BoltDesk desk, Commands commands) {
        this.desk = desk;
        this.commands = commands;
        Label title = new Label("Steps");
        title.getStyleClass().add("title");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        count.getStyleClass().add("second");
        HBox head = new HBox(8, title, gap, count);
        head.setAlignment(Pos.BASELINE_LEFT);
        head.setPadding(new Insets(12, 18, 8, 18));
        list.setId("step-list");
        list.setAccessibleText("Steps of bolting down");
        list.setCellFactory(view -> new StepCell());
        list.getSelectionModel().selectedItemProperty().addListener((observable, before, now) -> chosen(now));
        Label none = new Label("There is no order yet.");
        none.getStyleClass().add("second");
        list.setPlaceholder(none);
        VBox.setVgrow(list, Priority.ALWAYS);
        words.setWrapText(true);
        words.setMinHeight(Region.USE_PREF_SIZE);
        words.getStyleClass().add("second");
        words.setId("bolt-words");
        node = new VBox(head, list, foot());
        node.setMinWidth(0);
        desk.stand().addListener((observable, before, now) -> show());
        desk.at().addListener((observable, before, now) -> show());
        show();
    }

    Region node() {
        return node;
    }

    /** People who work at the same time, as chosen for the next search. */
    int fitters() {
        return fitters.getValue();
    }

    private Region foot() {
        find.setText("Find an order");
        find.setMinWidth(Region.USE_PREF_SIZE);
        find.setId("bolt-find");
        find.setMaxWidth(Double.MAX_VALUE);
        find.setOnAction(event -> commands.run("bolt.find"));
        Button earlier = move("bolt.earlier", "Earlier");
        Button later = move("bolt.later", "Later");
        HBox moves = new HBox(6, earlier, later);
        HBox.setHgrow(earlier, Priority.ALWAYS);
        HBox.setHgrow(later, Priority.ALWAYS);
        fitters.getItems().setAll(1, 2, 3, 4);
        fitters.setValue(2);
        fitters.setAccessibleText("Fitters who work at the same time");
        Label people = new Label("fitters");
        people.getStyleClass().add("second");
        people.setMinWidth(Region.USE_PREF_SIZE);
        HBox.setHgrow(find, Priority.ALWAYS);
        HBox search = new HBox(6, find, fitters, people);
        search.setAlignment(Pos.CENTER_LEFT);
        VBox foot = new VBox(6, words, moves, search);
        foot.setPadding(new Insets(8, 18, 10, 18));
        return foot;
    }

    private Button move(String id, String name) {
        Button button = new Button(name);
        button.setId(id.replace('.', '-'));
        button.setMaxWidth(Double.MAX_VALUE);
        button.setOnAction(event -> commands.run(id).ifPresent(words::setText));
        return button;
    }

    private void chosen(@Nullable StepRow row) {
        if (!following && row != null) {
            desk.go(row.number());
        }
    }

    private void show() {
        BoltStand stand = desk.stand().get();
        BoltDownPlan plan = stand.plan();
        List<StepRow> rows = plan == null ? List.of() : StepRow.of(plan, desk.number());
        following = true;
        if (!list.getItems().equals(rows)) {
            list.getItems().setAll(rows);
            if (!rows.isEmpty()) {
                list.getSelectionModel().select(desk.number() - 1);
                list.scrollTo(Math.max(0, desk.number() - BEFORE));
            }
        }
        following = false;
        count.setText(rows.isEmpty() ? "" : desk.number() + " of " + rows.size());
        find.setDisable(stand.working());
        String said = said(stand);
        words.setText(said);
        words.setManaged(!said.isEmpty());
    }

    private static String said(BoltStand stand) {
        if (stand.working()) {
            return "Being worked out ...";
        }
        if (!stand.refusal().isEmpty()) {
            return stand.refusal();
        }
        FoundOrder found = stand.found();
        if (found != null && !found.circles().isEmpty()) {
            return String.join(" ", found.circles());
        }
        if (found != null && !found.stuck().isEmpty()) {
            return String.join(" ", found.stuck().stream().map(Stuck::sentence).toList());
        }
        BoltDownPlan plan = stand.plan();
        if (plan != null && !plan.leftOut().isEmpty()) {
            return plan.leftOut().size() + " placed units are not in the order yet.";
        }
        return "";
    }

    private static final class StepCell extends ListCell<StepRow> {
        private final Label number = new Label();
        private final Label name = new Label();
        private final Label time = new Label();
        private final HBox line = new HBox(10);

        StepCell() {
            Region gap = new Region();
            HBox.setHgrow(gap, Priority.ALWAYS);
            name.setMinWidth(0);
            time.getStyleClass().add("figure");
            number.setMinWidth(Region.USE_PREF_SIZE);
            number.setAlignment(Pos.CENTER);
            line.setAlignment(Pos.CENTER_LEFT);
            line.getChildren().addAll(number, name, gap, time);
            setPrefWidth(0);
        }

        @Override
        protected void updateItem(@Nullable StepRow row, boolean empty) {
            super.updateItem(row, empty);
            setText(null);
            setGraphic(empty || row == null ? null : line);
            if (row != null && !empty) {
                number.setText(String.valueOf(row.number()));
                number.getStyleClass()
                        .setAll("label", "step", row.state().name().toLowerCase(java.util.Locale.ROOT));
                name.setText(row.name());
                name.getStyleClass().setAll("label");
                if (row.trouble()) {
                    name.getStyleClass().add("broken");
                }
                time.setText(row.trouble() ? "no way in" : row.time());
                setAccessibleText(row.spoken());
            }
        }
    }
}
