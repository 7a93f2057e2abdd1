package org.shelterwright.app.desk.window;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.geometry.Orientation;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.input.MouseDragEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.menu.Reach;
import org.shelterwright.app.desk.plan.PlanPart;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.space.Showing;
import org.shelterwright.app.desk.space.SpaceCommands;
import org.shelterwright.app.desk.space.SpacePart;
import org.shelterwright.app.desk.space.Viewpoint;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.desk.twin.TwinPart;
import org.shelterwright.catalog.space.Point;

/** The middle of the fit-out page: the space, the plan instead of it or beside it, and the table of units below. */
final class MiddlePart {
    private static final double TABLE_FROM = 0.7;
    private static final double SPACE_ABOVE = 0.56;

    /** From this width on, space and plan each have enough of it beside each other (px). */
    private static final double LEAST_BESIDE = 560;

    private static final String NO_SPACE = "This display draws no 3D.";

    private final @Nullable SpacePart space;
    private final Made<PlanPart> plan;
    private final Made<TwinPart> table;
    private final SplitPane views = new SplitPane();
    private final SplitPane stacked = new SplitPane(views);
    private final ScrollPane below = new ScrollPane();
    private final HeldCard held;
    private final StackPane node;
    private Consumer<String> told = words -> {};
    private Optional<Point> place = Optional.empty();

    /** @param inside what lies over the views while it is open */
    MiddlePart(Session session, Reach reach, Theme theme, Region inside) {
        Showing showing = new Showing();
        space = SpacePart.supported() ? new SpacePart(session, showing, reach, theme) : null;
        plan = new Made<>(() -> made(new PlanPart(session, showing, reach, theme)));
        if (space != null) {
            follow(space.node(), space::pointed, space::place);
        }
        Commands commands = reach.commands();
        commands.addAll(SpaceCommands.all(session, showing, this::aimed, this::flat));
        table = new Made<>(() -> new TwinPart(session, theme));
        stacked.setOrientation(Orientation.VERTICAL);
        // What needs more room than there is scrolls: it must not push the view out of the window.
        below.setFitToWidth(true);
        below.setFitToHeight(true);
        held = new HeldCard(session, theme);
        node = new StackPane(stacked, held, inside);
        held.boundsInParentProperty().addListener((observable, before, now) -> cover());
        held.visibleProperty().addListener((observable, before, now) -> cover());
        inside.visibleProperty().addListener((observable, was, is) -> {
            boolean hadFocus = inside.getScene() != null
                    && Revealing.isIn(inside.getScene().getFocusOwner(), inside);
            if (was && hadFocus) {
                takeFocus();
            }
        });
        node.addEventFilter(MouseEvent.MOUSE_DRAGGED, event -> held.avoid(event.getX(), node.getWidth()));
        node.addEventFilter(MouseDragEvent.MOUSE_DRAG_OVER, event -> held.avoid(event.getX(), node.getWidth()));
        node.widthProperty().addListener((observable, before, now) -> lay());
        views.getItems().setAll(space == null ? plan.get().node() : space.node());
        commands.add(view("view.space", "Show the space", "F2", () -> show(spaceOrPlan())));
        commands.add(Command.of(
                "view.plan",
                "Show the plan",
                List.of("F3"),
                () -> show(plan.get().node())));
        commands.add(view(
                "view.both",
                "Show space and plan",
                "F4",
                () -> show(spaceOrPlan(), plan.get().node())));
        commands.add(Command.of("view.table", "Show or hide the table of units", List.of("F9"), this::turnTable));
    }

    Region node() {
        return node;
    }

    private void show(Region... shown) {
        plan.get().withTools(shown.length == 1);
        views.getItems().setAll(shown);
        lay();
        shown[0].requestFocus();
    }

    /** Beside each other while both have room; else below each other, where a long body has more of the width. */
    private void lay() {
        boolean narrow = node.getWidth() < 2 * LEAST_BESIDE;
        views.setOrientation(narrow ? Orientation.VERTICAL : Orientation.HORIZONTAL);
        if (views.getItems().size() > 1) {
            views.setDividerPositions(narrow ? SPACE_ABOVE : 0.5);
        }
    }

    /** Gives the view the focus, so that its keys work. */
    void takeFocus() {
        Node view = views.getItems().get(0);
        if (view.getScene() == null) {
            // What is in a split pane is in the window only once that has its skin.
            Platform.runLater(view::requestFocus);
        } else {
            view.requestFocus();
        }
    }

    /** The view that the keys are about: the plan if it is alone, or has the focus. */
    private Viewpoint aimed() {
        if (space == null || flat().isPresent()) {
            return plan.get().viewpoint();
        }
        boolean both = views.getItems().size() > 1;
        return both && plan.get().node().isFocused() ? plan.get().viewpoint() : space.viewpoint();
    }

    private Optional<String> flat() {
        return space != null && views.getItems().contains(space.node())
                ? Optional.empty()
                : Optional.of(space == null ? NO_SPACE : "The plan alone is shown. Show the space first (F2).");
    }

    /** Shows something below the view in place of the table of units, or hides it again. */
    void turnBelow(Region part) {
        boolean shown = stacked.getItems().contains(below);
        below.setContent(part);
        stacked.getItems().setAll(shown ? List.of(views) : List.of(views, below));
        stacked.setDividerPositions(TABLE_FROM - 0.12);
    }

    /** Tells where the pointer is in the view, in words; nothing where it is beside the body. */
    void tellPointed(Consumer<String> teller) {
        told = teller;
    }

    /** The place that is pointed at, or was before the pointer left the view (frame of the body); empty beside the body. */
    Optional<Point> place() {
        return place;
    }

    /** No words are put below the card of what is held. */
    private void cover() {
        boolean shown = held.isVisible() && held.getOpacity() > 0;
        if (space != null) {
            space.cover(shown ? List.of(over(space.node())) : List.of());
        }
        if (plan.isMade()) {
            plan.get().cover(shown ? List.of(over(plan.get().node())) : List.of());
        }
    }

    private Rectangle2D over(Region view) {
        Bounds card = view.sceneToLocal(held.localToScene(held.getLayoutBounds()));
        return new Rectangle2D(card.getMinX(), card.getMinY(), card.getWidth(), card.getHeight());
    }

    private void follow(Region view, Supplier<Optional<String>> words, Supplier<Optional<Point>> pointed) {
        view.addEventHandler(MouseEvent.MOUSE_MOVED, event -> {
            place = pointed.get();
            told.accept(words.get().orElse(""));
        });
        view.addEventHandler(MouseEvent.MOUSE_EXITED, event -> told.accept(""));
    }

    private PlanPart made(PlanPart part) {
        follow(part.node(), part::pointed, part::place);
        return part;
    }

    /** Whether what breaks where a unit is held is told elsewhere, and not over the view. */
    void answering(boolean elsewhere) {
        held.setOpacity(elsewhere ? 0 : 1);
        cover();
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
                () -> space == null ? Optional.of(NO_SPACE) : Optional.empty(),
                action);
    }

    private Region spaceOrPlan() {
        return space == null ? plan.get().node() : space.node();
    }

    private void turnTable() {
        if (stacked.getItems().contains(table.get().node())) {
            stacked.getItems().setAll(views);
        } else {
            stacked.getItems().setAll(views, table.get().node());
            stacked.setDividerPositions(TABLE_FROM);
        }
    }
}
