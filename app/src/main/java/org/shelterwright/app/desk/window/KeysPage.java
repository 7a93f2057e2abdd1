package org.shelterwright.app.desk.window;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.command.KeyMap;

/** All commands with their keys. Enter on one waits for new keys; Delete gives it back those that it had at first. */
final class KeysPage extends VBox {
    private final KeyMap keys;
    private final Consumer<Map<String, List<String>>> keep;
    private final ListView<Command> list = new ListView<>();
    private final TextField filter = new TextField();
    private @Nullable Command waiting;

    /** @param keep is given what a person chose */
    KeysPage(Commands commands, KeyMap keys, Consumer<Map<String, List<String>>> keep) {
        super(8);
        this.keys = keys;
        this.keep = keep;
        filter.setPromptText("Filter by name");
        filter.setAccessibleText("Filter commands by name");
        VBox.setMargin(filter, new Insets(0, 14, 0, 14));
        list.getItems().setAll(commands.all());
        filter.textProperty()
                .addListener((observable, before, typed) ->
                        list.getItems().setAll(typed.isBlank() ? commands.all() : commands.find(typed)));
        list.setCellFactory(view -> new CommandCell(
                command -> command.equals(waiting) ? List.of("press the new keys, or Esc") : keys.keys(command),
                false));
        list.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        list.setOnMouseClicked(event -> {
            if (event.getClickCount() == 2) {
                await(list.getSelectionModel().getSelectedItem());
            }
        });
        VBox.setVgrow(list, Priority.ALWAYS);
        getChildren().addAll(filter, list);
    }

    /** Shows the page over the window. */
    void open(Pane over) {
        list.getSelectionModel().selectFirst();
        new SheetOver(
                        over,
                        "Keys",
                        "Enter, then new keys: gives a command other keys. Delete: gives it its first keys again."
                                + " Single letters and arrows work in the view only.",
                        this,
                        620)
                .open(list);
    }

    private void key(KeyEvent event) {
        Command chosen = list.getSelectionModel().getSelectedItem();
        Optional<String> pressed = Keystroke.of(event);
        if (chosen == null || pressed.isEmpty()) {
            return;
        }
        if (waiting != null) {
            if (event.getCode() != KeyCode.ESCAPE) {
                keys.choose(waiting, pressed.get());
                keep.accept(keys.own());
            }
            await(null);
        } else if (event.getCode() == KeyCode.ENTER) {
            await(chosen);
        } else if (event.getCode() == KeyCode.DELETE) {
            keys.reset(chosen);
            keep.accept(keys.own());
            list.refresh();
        } else {
            return;
        }
        event.consume();
    }

    private void await(@Nullable Command command) {
        waiting = command;
        list.refresh();
    }
}
