package org.shelterwright.app.desk.window;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Orientation;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.plan.PlanPart;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.space.SpacePart;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.desk.twin.TwinPart;
import org.shelterwright.catalog.space.Point;

/** The middle of the fit-out page: the space, the plan instead of it or beside it, and the table of units below. */
final class MiddlePart {
    private static final double TABLE_FROM = 0.7;

    private final @Nullable SpacePart space;
    private final PlanPart plan;
    private final TwinPart table;
    private final SplitPane views = new SplitPane();
    private final SplitPane stacked = new SplitPane(views);
    private final HeldCard held;
    private final StackPane node;

    /** @param inside what lies over the views while it is open */
    MiddlePart(Session session, Commands commands, Theme theme, Region inside) {
        space = SpacePart.supported() ? new SpacePart(session, commands, theme) : null;
        plan = new PlanPart(session, commands, theme);
        table = new TwinPart(session);
        stacked.setOrientation(Orientation.VERTICAL);
        held = new HeldCard(session, theme);
        node = new StackPane(stacked, held, inside);
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

    /** Shows something below the view in place of the table of units, or hides it again. */
    void turnBelow(Region part) {
        boolean shown = stacked.getItems().contains(part);
        stacked.getItems().setAll(shown ? List.of(views) : List.of(views, part));
        stacked.setDividerPositions(TABLE_FROM - 0.12);
    }

    /** Where the pointer is in the space, in words; empty beside the body. */
    Optional<String> pointed() {
        return space == null ? Optional.empty() : space.pointed();
    }

    /** The place that was pointed at last in the space (frame of the body). */
    Optional<Point> place() {
        return space == null ? Optional.empty() : space.place();
    }

    /** Whether what breaks where a unit is held is told elsewhere, and not over the view. */
    void answering(boolean elsewhere) {
        held.setOpacity(elsewhere ? 0 : 1);
    }

    /** The space; empty where the display draws no 3D. */
    Optional<SpacePart> space() {
        return Optional.ofNullable(space);
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
        if (stacked.getItems().contains(table.node())) {
            stacked.getItems().setAll(views);
        } else {
            stacked.getItems().setAll(views, table.node());
            stacked.setDividerPositions(TABLE_FROM);
        }
    }
}
