package org.shelterwright.app.desk.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.menu.CommandList;
import org.shelterwright.app.desk.menu.Reach;
import org.shelterwright.app.desk.menu.ToolButton;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.style.Icon;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.scene.PlacedUnit;

/** Buttons for orders. One that cannot be done is off and says why; the reason is heard and shown over it. */
final class OrderButtons {
    private static final List<String> MOUNTING = List.of(
            "edit.mount-floor",
            "edit.mount-wall",
            "edit.mount-roof",
            "edit.mount-on",
            "edit.mount-under",
            CommandList.LINE,
            "edit.stow",
            "edit.unstow");
    private static final List<String> LINING_UP = List.of(
            "edit.align-fronts",
            "edit.align-rears",
            "edit.align-left-sides",
            "edit.align-right-sides",
            "edit.align-middles-x",
            "edit.align-middles-y",
            CommandList.LINE,
            "edit.space-x",
            "edit.space-y",
            CommandList.LINE,
            "edit.swap");

    private final Session session;
    private final Commands commands;
    private final Reach reach;
    private final List<Runnable> refreshers = new ArrayList<>();
    private final FlowPane node = new FlowPane(4, 4);

    /** @param reach of commands that are there already */
    OrderButtons(Session session, Reach reach) {
        this.session = session;
        this.reach = reach;
        commands = reach.commands();
        node.getChildren()
                .addAll(
                        button("edit.turn-left", Icon.TURN),
                        button("edit.pin", Icon.PIN),
                        list("unit-mounting", "Mount elsewhere, stow", Icon.MOUNT_ON, MOUNTING),
                        list("unit-lining-up", "Line up, space evenly, swap", Icon.LINE_UP, LINING_UP),
                        button("edit.duplicate", Icon.DUPLICATE),
                        button("edit.take-out", Icon.TAKE_OUT));
    }

    Region node() {
        return node;
    }

    void show() {
        refreshers.forEach(Runnable::run);
    }

    /** A mark that is in while all selected units are pinned along an axis; {@code null}: in their turn. */
    Region pin(String id, @Nullable Axis axis) {
        ToggleButton mark = new ToggleButton(null, Icon.PIN.node(16));
        mark.getStyleClass().add("bare");
        mark.setMinSize(28, 28);
        mark.setStyle("-fx-padding: 4; -fx-min-height: 28;");
        return wired(mark, id, () -> mark.setSelected(pinned(axis)));
    }

    private boolean pinned(@Nullable Axis axis) {
        List<PlacedUnit> units = session.selection().units().get().stream()
                .flatMap(id -> session.now().scene().unit(id).stream())
                .toList();
        return !units.isEmpty()
                && units.stream().map(unit -> unit.placement().pin()).allMatch(pin -> holds(pin, axis));
    }

    private static boolean holds(Pin pin, @Nullable Axis axis) {
        return axis == null ? pin.turn() : pin.holds(axis);
    }

    private Region list(String id, String name, Icon icon, List<String> ids) {
        ToolButton button = new ToolButton(name, icon);
        button.setId(id);
        CommandList.under(button, reach, ids);
        return button;
    }

    private Region button(String id, Icon icon) {
        Button button = new Button(null, icon.node(20));
        button.getStyleClass().add("bare");
        return wired(button, id, () -> {});
    }

    /** The tooltip lies on a pane around it, since what is off takes no pointer. */
    private Region wired(ButtonBase button, String id, Runnable more) {
        Command command = commands.byId(id).orElseThrow();
        String keys = command.keys().isEmpty() ? "" : " (" + command.keys().get(0) + ")";
        button.setId(id.replace('.', '-'));
        button.setAccessibleText(command.name());
        StackPane pane = new StackPane(button);
        Tooltip tip = new Tooltip();
        Tooltip.install(pane, tip);
        button.setOnAction(event -> {
            commands.run(id);
            more.run();
        });
        refreshers.add(() -> {
            Optional<String> obstacle = command.obstacle().get();
            button.setDisable(obstacle.isPresent());
            tip.setText(command.name()
                    + keys
                    + obstacle.map(reason -> "\n" + reason).orElse(""));
            button.setAccessibleHelp(obstacle.orElse(""));
            more.run();
        });
        return pane;
    }
}
