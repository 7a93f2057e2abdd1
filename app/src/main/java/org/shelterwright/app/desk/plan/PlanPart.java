package org.shelterwright.app.desk.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Rectangle2D;
import javafx.scene.layout.Region;
import org.shelterwright.app.desk.menu.Reach;
import org.shelterwright.app.desk.paint.ScreenCanvas;
import org.shelterwright.app.desk.paint.Worn;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.space.GlassDrawing;
import org.shelterwright.app.desk.space.Pointing;
import org.shelterwright.app.desk.space.Showing;
import org.shelterwright.app.desk.space.Sight;
import org.shelterwright.app.desk.space.SpacePane;
import org.shelterwright.app.desk.space.Steering;
import org.shelterwright.app.desk.space.ViewTools;
import org.shelterwright.app.desk.space.Viewpoint;
import org.shelterwright.app.desk.space.eye.FixedView;
import org.shelterwright.app.desk.space.mark.Glass;
import org.shelterwright.app.desk.space.mark.Overlay;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.view.Aspect;
import org.shelterwright.app.view.FlatView;
import org.shelterwright.app.view.Sheeted;
import org.shelterwright.catalog.space.Point;

/** The plan: the view from above as documents draw it, to be worked in like the space. Needs no 3D of the machine. */
public final class PlanPart {
    private static final double MARGIN = 20;

    private final Session session;
    private final Showing showing;
    private final Viewpoint viewpoint;
    private final PlanPane pane;
    private final GlassDrawing drawing;
    private final Pointing pointing;

    /**
     * @param shared what is shown of the body, shared with other views; the plan is never cut
     * @param reach for the buttons over the plan
     */
    public PlanPart(Session session, Showing shared, Reach reach, Theme theme) {
        this.session = session;
        showing = shared.uncut();
        viewpoint = new Viewpoint(session, FixedView.ABOVE, MARGIN);
        pane = new PlanPane(
                viewpoint, new ViewTools(session, shared, reach, theme).node(), theme, new Worn(theme), () -> shapes());
        pointing = new Pointing(session, showing, viewpoint, pane, pane::redraw);
        drawing = new GlassDrawing(session, showing, viewpoint, theme, pointing);
        new Steering(viewpoint, showing, session, pane, false);
        pane.setId("plan");
        pane.getStyleClass().add(SpacePane.VIEW);
        pane.setAccessibleText("Plan of the body. Every unit with its place is also in the table of units.");
        session.standing().addListener((observable, before, now) -> pane.redraw());
        session.situation().addListener((observable, before, now) -> pane.redraw());
        session.selection().units().addListener((observable, before, now) -> pane.redraw());
        session.selection().finding().addListener((observable, before, now) -> pane.redraw());
        session.selection().wires().addListener((observable, before, now) -> pane.redraw());
        showing.onChange(pane::redraw);
        theme.onChange(pane::redraw);
    }

    public Region node() {
        return pane;
    }

    /** Whether the plan has tools of its own; beside another view it does without. */
    public void withTools(boolean own) {
        pane.controls().setVisible(own);
        pane.requestLayout();
    }

    /** Says what lies over the view (px of it): no words are put below. */
    public void cover(List<Rectangle2D> parts) {
        if (drawing.cover(parts)) {
            pane.redraw();
        }
    }

    /** Whether moves of the view take no time. */
    public void reduceMotion(boolean reduced) {
        viewpoint.reduceMotion(reduced);
    }

    public Viewpoint viewpoint() {
        return viewpoint;
    }

    /** The place under the pointer in words; empty beside the body. */
    public Optional<String> pointed() {
        return pointing.pointed();
    }

    /** The place that was pointed at last (frame of the body). */
    public Optional<Point> place() {
        return pointing.place();
    }

    private List<Shape> shapes() {
        Glass glass = drawing.glass();
        Sheeted sheeted =
                new Sheeted(Aspect.ABOVE, ScreenCanvas.PIXELS / glass.eye().scale(), glass.spot(Point.ORIGIN));
        Sight sight = showing.sight().get();
        boolean zones = showing.overlays().contains(Overlay.CLEAR_ZONES);
        List<Shape> shapes = new ArrayList<>(
                new FlatView(session.now().scene(), session.situation().get(), sheeted, 0, null, sight::shows)
                        .shapes(zones));
        shapes.addAll(drawing.shapes());
        return shapes;
    }
}
