package org.shelterwright.app.desk.window;

import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Bounds;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Pane;
import javafx.scene.layout.StackPane;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.command.KeyMap;
import org.shelterwright.app.desk.style.Icon;
import org.shelterwright.app.desk.style.Theme;

/** The field in which a command is found by typing, with the list below it. */
final class CommandField extends StackPane {
    private static final double WIDTH = 440;
    private static final double ROW = 34;
    private static final int MOST_ROWS = 11;

    private final Commands commands;
    private final Theme theme;
    private final Pane over;
    private final Consumer<String> refused;
    private final TextField field = new TextField();
    private final ListView<Command> list = new ListView<>();
    private @Nullable Node before;

    /** @param over pane that lies over the whole window */
    CommandField(Commands commands, KeyMap keys, Theme theme, Pane over, Consumer<String> refused) {
        this.commands = commands;
        this.theme = theme;
        this.over = over;
        this.refused = refused;
        field.setPromptText("Find a command");
        field.setAccessibleText("Find a command");
        field.setId("command-field");
        grow();
        theme.onChange(this::grow);
        Node icon = Icon.FIND.node(18);
        StackPane.setAlignment(icon, Pos.CENTER_LEFT);
        icon.setTranslateX(9);
        getChildren().addAll(field, icon);
        setAlignment(Pos.CENTER_LEFT);
        list.setId("command-list");
        list.getStyleClass().add("sheet-over");
        list.setCellFactory(view -> new CommandCell(keys::keys, true));
        list.setFocusTraversable(false);
        list.setOnMouseClicked(event -> run());
        field.textProperty().addListener((observable, old, typed) -> find(typed));
        field.focusedProperty().addListener((observable, was, is) -> {
            if (is) {
                find(field.getText());
            } else {
                hide();
            }
        });
        field.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    }

    private void grow() {
        field.setStyle("-fx-padding: 5 9 5 " + (9 + theme.sized(23)) + ";");
        field.setPrefWidth(theme.sized(220));
        setMaxWidth(theme.sized(240));
    }

    /** Takes the focus, and gives it back when a command was chosen or put away. */
    void open() {
        before = getScene().getFocusOwner();
        field.clear();
        field.requestFocus();
    }

    private void key(KeyEvent event) {
        int at = list.getSelectionModel().getSelectedIndex();
        if (event.getCode() == KeyCode.DOWN) {
            select(at + 1);
        } else if (event.getCode() == KeyCode.UP) {
            select(at - 1);
        } else if (event.getCode() == KeyCode.ENTER) {
            run();
        } else if (event.getCode() == KeyCode.ESCAPE) {
            leave();
        } else {
            return;
        }
        event.consume();
    }

    private void select(int index) {
        int last = list.getItems().size() - 1;
        int held = Math.max(0, Math.min(last, index));
        list.getSelectionModel().select(held);
        list.scrollTo(Math.max(0, held - 3));
    }

    private void find(String typed) {
        List<Command> found = typed.isBlank() ? commands.ableFirst() : commands.find(typed);
        list.getItems().setAll(found);
        list.getSelectionModel().selectFirst();
        if (!field.isFocused() || found.isEmpty()) {
            hide();
            return;
        }
        Bounds place = over.sceneToLocal(localToScene(getBoundsInLocal()));
        double width = Math.min(place.getMaxX() - 8, theme.sized(WIDTH));
        list.resizeRelocate(
                place.getMaxX() - width,
                place.getMaxY() + 6,
                width,
                Math.min(
                        over.getHeight() - place.getMaxY() - 40,
                        theme.sized(Math.min(found.size(), MOST_ROWS) * ROW) + 14));
        list.setManaged(false);
        if (!over.getChildren().contains(list)) {
            over.getChildren().add(list);
        }
    }

    private void run() {
        Command chosen = list.getSelectionModel().getSelectedItem();
        leave();
        if (chosen != null) {
            refused.accept(commands.run(chosen.id()).orElse(""));
        }
    }

    private void leave() {
        hide();
        field.clear();
        if (before != null && before.getScene() != null) {
            before.requestFocus();
        } else {
            getScene().getRoot().requestFocus();
        }
    }

    private void hide() {
        over.getChildren().remove(list);
    }
}
