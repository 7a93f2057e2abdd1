package org.shelterwright.app.desk.window;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.command.Command;

/** A command in a list: its name, its keys, and the reason if it cannot be done now. */
final class CommandCell extends ListCell<Command> {
    private final Function<Command, List<String>> keys;
    private final boolean reasoned;
    private final Label name = new Label();
    private final Label reason = new Label();
    private final HBox caps = new HBox(4);
    private final HBox line;

    /** @param reasoned whether it says why a command cannot be done now */
    CommandCell(Function<Command, List<String>> keys, boolean reasoned) {
        this.keys = keys;
        this.reasoned = reasoned;
        name.setWrapText(true);
        reason.getStyleClass().add("caption");
        reason.setWrapText(true);
        VBox words = new VBox(name, reason);
        words.setAlignment(Pos.CENTER_LEFT);
        Region gap = new Region();
        HBox.setHgrow(words, Priority.ALWAYS);
        caps.setAlignment(Pos.CENTER_RIGHT);
        caps.setMinWidth(Region.USE_PREF_SIZE);
        line = new HBox(8, words, gap, caps);
        line.setAlignment(Pos.CENTER_LEFT);
        setPrefWidth(0);
    }

    @Override
    protected void updateItem(Command command, boolean empty) {
        super.updateItem(command, empty);
        if (empty || command == null) {
            setGraphic(null);
            setAccessibleText(null);
            return;
        }
        Optional<String> obstacle = reasoned ? command.obstacle().get() : Optional.empty();
        name.setText(command.name());
        name.getStyleClass().removeAll("second");
        if (obstacle.isPresent()) {
            name.getStyleClass().add("second");
        }
        reason.setText(obstacle.orElse(""));
        reason.setVisible(obstacle.isPresent());
        reason.setManaged(obstacle.isPresent());
        List<String> written = keys.apply(command);
        caps.getChildren().setAll(written.stream().map(CommandCell::cap).toList());
        setGraphic(line);
        setAccessibleText(command.name()
                + (written.isEmpty() ? "" : ", keys " + String.join(" or ", written))
                + obstacle.map(why -> ". Cannot be done now: " + why).orElse(""));
    }

    private static Label cap(String keys) {
        Label cap = new Label(keys);
        cap.getStyleClass().add("key");
        return cap;
    }
}
