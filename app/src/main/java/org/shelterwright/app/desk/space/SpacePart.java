package org.shelterwright.app.desk.space;

import java.util.List;
import java.util.Optional;
import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import javafx.geometry.Point2D;
import javafx.geometry.Point3D;
import javafx.geometry.Rectangle2D;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.Region;
import org.shelterwright.app.desk.menu.Reach;
import org.shelterwright.app.desk.paint.Worn;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.app.desk.space.eye.FixedView;
import org.shelterwright.app.desk.space.mark.FloorPatches;
import org.shelterwright.app.desk.space.mark.Overlay;
import org.shelterwright.app.desk.space.solid.World;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.catalog.space.Point;

/** The space of the body: seen from anywhere, pointed at, changed by hand. */
public final class SpacePart {
    /** The command that a double click gives, if there is one. */
    private static final String OPEN = "inside.open";

    private final Session session;
    private final Showing showing;
    private final Viewpoint viewpoint;
    private final World world;
    private final SpacePane pane;
    private final Pointing pointing;
    private final GlassDrawing drawing;

    /**
     * @param showing what is shown of the body, shared with other views
     * @param reach for the buttons over the view
     */
    public SpacePart(Session session, Showing showing, Reach reach, Theme theme) {
        this.session = session;
        this.showing = showing;
        viewpoint = new Viewpoint(session, FixedView.PICTORIAL);
        Worn worn = new Worn(theme);
        world = new World(worn, viewpoint.now());
        pane = new SpacePane(
                world,
                viewpoint,
                new ViewTools(session, showing, reach, theme).node(),
                worn,
                () -> drawing().shapes());
        pointing = new Pointing(session, showing, viewpoint, pane, pane::redraw);
        drawing = new GlassDrawing(session, showing, viewpoint, theme, pointing);
        new Steering(viewpoint, showing, session, pane, true);
        pane.setOnMouseClicked(event -> {
            boolean twice = event.getButton() == MouseButton.PRIMARY && event.getClickCount() == 2;
            if (twice
                    && event.isStillSincePress()
                    && reach.commands().byId(OPEN).isPresent()) {
                reach.run(OPEN);
            }
        });
        pane.setId("space");
        pane.setAccessibleText("View of the body. Every unit with its place is also in the table of units.");
        session.standing().addListener((observable, before, now) -> show());
        session.situation().addListener((observable, before, now) -> show());
        session.selection().units().addListener((observable, before, now) -> dress());
        session.selection().finding().addListener((observable, before, now) -> pane.redraw());
        session.selection().wires().addListener((observable, before, now) -> pane.redraw());
        showing.onChange(this::show);
        theme.onChange(this::paint);
        show();
    }

    /** Whether this machine can draw it; otherwise the plan has to do. */
    public static boolean supported() {
        return Platform.isSupported(ConditionalFeature.SCENE3D);
    }

    public Region node() {
        return pane;
    }

    /** Says what lies over the view (px of it): no words are put below. */
    public void cover(List<Rectangle2D> parts) {
        if (drawing.cover(parts)) {
            pane.redraw();
        }
    }

    /** Whether moves of the eye take no time. */
    public void reduceMotion(boolean reduced) {
        viewpoint.reduceMotion(reduced);
    }

    /** The place under the pointer (mm, frame of the body), in words such as "x 2 362, y 1 400, z 0"; empty beside the body. */
    public Optional<String> pointed() {
        return pointing.pointed();
    }

    /** The place that was pointed at last (frame of the body). */
    public Optional<Point> place() {
        return pointing.place();
    }

    /** Where a place of the body (µm) is seen, on the screen (px). */
    public Point2D onScreen(Point place) {
        Eye.Seen seen = viewpoint.now().project(new Point3D(place.x() / 1e3, place.y() / 1e3, place.z() / 1e3));
        return pane.localToScreen(seen.x(), seen.y());
    }

    public Viewpoint viewpoint() {
        return viewpoint;
    }

    private GlassDrawing drawing() {
        return drawing;
    }

    private void show() {
        world.show(
                session.now().scene(),
                session.situation().get(),
                showing.section().get());
        world.zones().setVisible(showing.overlays().contains(Overlay.CLEAR_ZONES));
        world.swings().setVisible(showing.overlays().contains(Overlay.SWINGS));
        FloorPatches patches = FloorPatches.of(session.now().ledger(), showing.shown());
        world.lay(patches.facets(), patches.traces());
        dress();
    }

    private void dress() {
        Sight sight = showing.sight().get();
        world.dress(unit -> sight.dress(unit, session.selection().units().get()));
        pane.redraw();
    }

    private void paint() {
        world.paint();
        pane.redraw();
    }
}
