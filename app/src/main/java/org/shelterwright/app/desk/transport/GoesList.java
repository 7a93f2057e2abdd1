package org.shelterwright.app.desk.transport;

import java.util.List;
import java.util.Set;
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
import org.shelterwright.app.desk.style.Icon;

/** What goes on the leg that is looked at, car by car; choosing a car shows it, choosing a piece selects it. */
final class GoesList {
    private final JourneySession session;
    private final ListView<GoesLine> list = new ListView<>();
    private final Label count = new Label();
    private final VBox node;
    private boolean filling;

    GoesList(JourneySession session) {
        this.session = session;
        Label title = new Label("What goes");
        title.getStyleClass().add("title");
        count.getStyleClass().add("second");
        HBox gap = new HBox();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox head = new HBox(8, title, gap, count);
        head.setAlignment(Pos.CENTER_LEFT);
        head.setPadding(new Insets(10, 18, 4, 18));
        list.setId("goes-list");
        list.setAccessibleText("What goes on this leg");
        list.setCellFactory(view -> new Cell());
        list.getSelectionModel().selectedItemProperty().addListener((observable, before, line) -> choose(line));
        VBox.setVgrow(list, Priority.ALWAYS);
        list.setMinHeight(60);
        node = new VBox(head, list);
        session.standing().addListener((observable, before, now) -> show());
        session.focus().addListener((observable, before, now) -> show());
        show();
    }

    Region node() {
        return node;
    }

    private void choose(@Nullable GoesLine line) {
        if (filling) {
            return;
        }
        session.now().ifPresent(now -> {
            if (line instanceof GoesLine.Car car) {
                session.look(focus -> focus.onLoad(car.id(), now.scene()).onPieces(Set.of()));
            } else if (line instanceof GoesLine.One one) {
                String load = one.load();
                session.look(
                        focus -> (load == null ? focus : focus.onLoad(load, now.scene())).onPieces(Set.of(one.id())));
            }
        });
    }

    private void show() {
        filling = true;
        List<GoesLine> lines = session.leg().map(GoesLine::of).orElse(List.of());
        if (!list.getItems().equals(lines)) {
            list.getItems().setAll(lines);
        }
        long placed = lines.stream()
                .filter(line -> line instanceof GoesLine.One one && one.load() != null)
                .count();
        count.setText(placed + " on cars");
        Focus focus = session.focus().get();
        int index = focus == null
                ? -1
                : focus.leader()
                        .map(id -> index(lines, id, focus.load()))
                        .filter(found -> found >= 0)
                        .orElseGet(() -> car(lines, focus.load()));
        if (index < 0) {
            list.getSelectionModel().clearSelection();
        } else if (list.getSelectionModel().getSelectedIndex() != index) {
            list.getSelectionModel().select(index);
        }
        filling = false;
    }

    private static int index(List<GoesLine> lines, String id, @Nullable String load) {
        int found = -1;
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i) instanceof GoesLine.One one && one.id().equals(id)) {
                found = found < 0 || one.load() != null && one.load().equals(load) ? i : found;
            }
        }
        return found;
    }

    private static int car(List<GoesLine> lines, @Nullable String load) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i) instanceof GoesLine.Car car && car.id().equals(load)) {
                return i;
            }
        }
        return -1;
    }

    private static final class Cell extends ListCell<GoesLine> {
        private final Label name = new Label();
        private final Label figure = new Label();
        private final Region gap = new Region();
        private final HBox line = new HBox(8);

        Cell() {
            HBox.setHgrow(gap, Priority.ALWAYS);
            name.setMinWidth(0);
            figure.setMinWidth(USE_PREF_SIZE);
            line.setAlignment(Pos.CENTER_LEFT);
            setPrefWidth(0);
        }

        @Override
        protected void updateItem(@Nullable GoesLine shown, boolean empty) {
            super.updateItem(shown, empty);
            setText(null);
            setGraphic(null);
            setAccessibleText(null);
            line.getChildren().clear();
            if (empty || shown == null) {
                return;
            }
            if (shown instanceof GoesLine.Car car) {
                fill(Icon.TRANSIT_CAR, car.name(), "strong", car.figure(), "second");
            } else if (shown instanceof GoesLine.Heading heading) {
                fill(null, heading.words(), "medium", "", "second");
            } else if (shown instanceof GoesLine.One one) {
                fill(one.load() == null ? Icon.ADD : Icon.CRATE, one.name(), "label", one.figure(), "figure");
                if (one.pinned()) {
                    line.getChildren().add(line.getChildren().size() - 1, Icon.PIN.node(16));
                }
                setAccessibleText(one.name() + ", " + one.figure() + (one.pinned() ? ", pinned" : ""));
            }
            setGraphic(line);
        }

        private void fill(@Nullable Icon icon, String words, String style, String mass, String massStyle) {
            name.setText(words);
            figure.setText(mass);
            name.getStyleClass().setAll("label", style);
            figure.getStyleClass().setAll("label", massStyle);
            if (icon != null) {
                line.getChildren().add(icon.node(18));
            }
            line.getChildren().addAll(name, gap, figure);
            setAccessibleText(words + ", " + mass);
        }
    }
}
