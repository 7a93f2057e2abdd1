package org.shelterwright.app.desk.window;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Orientation;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.plan.PlanPart;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.space.SpacePart;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.desk.twin.TwinPart;

/** The middle of the fit-out page: the space, the plan instead of it or beside it, and the table of units below. */
final class MiddlePart {
    private static final double TABLE_FROM = 0.7;

    private final @Nullable SpacePart space;
    private final PlanPart plan;
    private final TwinPart table;
    private final SplitPane views = new SplitPane();
    private final SplitPane node = new SplitPane(views);

    MiddlePart(Session session, Commands commands, Theme theme) {
        space = SpacePart.supported() ? new SpacePart(session, commands, theme) : null;
        plan = new PlanPart(session, commands, theme);
        table = new TwinPart(session);
        node.setOrientation(Orientation.VERTICAL);
        views.getItems().setAll(space == null ? plan.node() : space.node());
        commands.add(view(
                "view.space", "Show the space", "F2", () -> views.getItems().setAll(spaceOrPlan())));
        commands.add(Command.of(
                "view.plan",
                "Show the plan",
                List.of("F3"),
                () -> views.getItems().setAll(plan.node())));
        commands.add(view(
                "view.both", "Show space and plan", "F4", () -> views.getItems().setAll(spaceOrPlan(), plan.node())));
        commands.add(Command.of("view.table", "Show or hide the table of units", List.of("F9"), this::turnTable));
    }

    Region node() {
        return node;
    }

    /** Where the pointer is in the space, in words; empty beside the body. */
    Optional<String> pointed() {
        return space == null ? Optional.empty() : space.pointed();
    }

    private Command view(String id, String name, String key, Runnable action) {
        return new Command(
                id,
                name,
                List.of("3D", "view"),
                List.of(key),
                () -> space == null ? Optional.of("This display draws no 3D.") : Optional.empty(),
                action);
    }

    private Region spaceOrPlan() {
        return space == null ? plan.node() : space.node();
    }

    private void turnTable() {
        if (node.getItems().size() > 1) {
            node.getItems().setAll(views);
        } else {
            node.getItems().setAll(views, table.node());
            node.setDividerPositions(TABLE_FROM);
        }
    }
}
