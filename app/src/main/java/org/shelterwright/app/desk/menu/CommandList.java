package org.shelterwright.app.desk.menu;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.geometry.Side;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.CustomMenuItem;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.command.Command;

/**
 * A list of commands that a button opens: each with its name and its keys, and the reason where it cannot be done now. It is made
 * when it is opened, and so is always about what stands.
 */
public final class CommandList {
    /** Stands for a line between commands. */
    public static final String LINE = "";

    /** Widest reason (em). */
    private static final int REASON = 22;

    private final Reach reach;
    private final List<String> ids;
    private final ContextMenu menu = new ContextMenu();
    private final List<HBox> lines = new ArrayList<>();

    private CommandList(Reach reach, List<String> ids) {
        this.reach = reach;
        this.ids = List.copyOf(ids);
        menu.setOnShown(event -> widen());
    }

    /**
     * Makes a button open a list of commands below itself.
     *
     * @param ids ids of the commands, or {@link #LINE}; those that are not there are left out
     */
    public static void under(Button button, Reach reach, List<String> ids) {
        CommandList list = new CommandList(reach, ids);
        button.setOnAction(event -> list.open(button));
    }

    private void open(Node button) {
        if (menu.isShowing()) {
            menu.hide();
            return;
        }
        lines.clear();
        menu.getItems().setAll(ids.stream().flatMap(id -> item(id).stream()).toList());
        menu.show(button, Side.BOTTOM, 0, 4);
    }

    /** All lines are as wide as the widest, so that their keys stand below each other. Only with its style a line has its width. */
    private void widen() {
        lines.forEach(Node::applyCss);
        double widest =
                lines.stream().mapToDouble(line -> line.prefWidth(-1)).max().orElse(0);
        lines.forEach(line -> line.setPrefWidth(widest));
    }

    private Optional<MenuItem> item(String id) {
        if (id.equals(LINE)) {
            return Optional.of(new SeparatorMenuItem());
        }
        return reach.command(id).map(command -> {
            MenuItem item = new CustomMenuItem(line(command));
            item.setId("menu-" + id.replace('.', '-'));
            item.setOnAction(event -> reach.run(id));
            return item;
        });
    }

    private Node line(Command command) {
        Optional<String> obstacle = command.obstacle().get();
        Label name = new Label(command.name());
        VBox words = new VBox(name);
        words.setAlignment(Pos.CENTER_LEFT);
        obstacle.ifPresent(why -> {
            name.getStyleClass().add("second");
            Label reason = new Label(why);
            reason.getStyleClass().add("caption");
            reason.setWrapText(true);
            reason.setStyle("-fx-max-width: " + REASON + "em;");
            words.getChildren().add(reason);
        });
        HBox line = new HBox(24, words);
        HBox.setHgrow(words, Priority.ALWAYS);
        List<String> written = reach.keys().keys(command);
        if (!written.isEmpty()) {
            Label key = new Label(written.get(0));
            key.getStyleClass().add("key");
            key.setMinWidth(Region.USE_PREF_SIZE);
            line.getChildren().add(key);
        }
        line.setAlignment(Pos.CENTER_LEFT);
        line.setMinWidth(220);
        line.setAccessibleText(reach.named(command)
                + obstacle.map(why -> ". Cannot be done now: " + why).orElse(""));
        lines.add(line);
        return line;
    }
}
