package org.shelterwright.app.desk.transport;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.style.Icon;
import org.shelterwright.layouts.transport.Lashing;
import org.shelterwright.layouts.transport.edit.TakeLashing;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/** What holds the selected piece, or all on the car: its lashings, each of which can be taken off, and its blocks. */
final class HoldRows {
    private final JourneySession session;
    private final VBox rows = new VBox(2);
    private final VBox node;
    private List<String> shown = List.of();

    HoldRows(JourneySession session, Commands commands) {
        this.session = session;
        Label title = new Label("Held by");
        title.getStyleClass().add("strong");
        FlowPane orders = new FlowPane(
                2,
                2,
                order(commands, "journey.propose", "Propose what holds"),
                order(commands, "journey.let-go", "Take it off"),
                order(commands, "journey.lash", "Lash by hand"));
        node = new VBox(4, title, rows, orders);
    }

    Region node() {
        return node;
    }

    void show() {
        PlacedLoad load = session.load().orElse(null);
        LegScene leg = session.leg().orElse(null);
        if (load == null || leg == null) {
            rows.getChildren().clear();
            shown = List.of();
            return;
        }
        Set<String> chosen =
                session.focus().get() == null ? Set.of() : session.focus().get().pieces();
        List<Lashing> lashings = load.load().lashings().stream()
                .filter(one -> chosen.isEmpty() || one.what().stream().anyMatch(chosen::contains))
                .toList();
        List<String> words = new ArrayList<>(HoldWords.blocks(load, chosen));
        lashings.forEach(one -> words.add(one.key() + " " + HoldWords.of(one, leg)));
        if (words.equals(shown)) {
            return;
        }
        shown = words;
        rows.getChildren().clear();
        HoldWords.blocks(load, chosen).forEach(line -> rows.getChildren().add(second(line)));
        for (Lashing one : lashings) {
            rows.getChildren().add(row(load.id(), one, HoldWords.of(one, leg)));
        }
        if (words.isEmpty()) {
            rows.getChildren().add(second(load.load().packed() ? "Packed from wall to wall." : "Nothing yet."));
        }
    }

    private HBox row(String load, Lashing lashing, String words) {
        Label key = new Label(lashing.key());
        key.getStyleClass().add("figure");
        key.setMinWidth(28);
        Label what = second(words);
        what.setMinWidth(0);
        HBox.setHgrow(what, Priority.ALWAYS);
        what.setMaxWidth(Double.MAX_VALUE);
        Button off = new Button(null, Icon.TAKE_OUT.node(16));
        off.getStyleClass().add("bare");
        off.setAccessibleText("Take lashing " + lashing.key() + " off");
        off.setTooltip(new Tooltip("Take lashing " + lashing.key() + " off"));
        off.setOnAction(event -> session.apply(new TakeLashing(load, lashing.key())));
        HBox row = new HBox(4, key, what, off);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private static Label second(String words) {
        Label label = new Label(words);
        label.getStyleClass().add("second");
        label.setWrapText(true);
        return label;
    }

    private static Button order(Commands commands, String id, String words) {
        Button button = new Button(words);
        button.setId(id.replace('.', '-'));
        button.getStyleClass().add("order");
        button.setOnAction(event -> commands.run(id));
        return button;
    }
}
