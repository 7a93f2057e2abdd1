package org.shelterwright.app.desk.space;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Rectangle2D;
import org.shelterwright.app.desk.paint.ScreenCanvas;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.space.mark.Glass;
import org.shelterwright.app.desk.space.mark.HintLook;
import org.shelterwright.app.desk.space.mark.Marks;
import org.shelterwright.app.desk.space.mark.Over;
import org.shelterwright.app.desk.space.mark.WireMarks;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.type.Typeface;

/** What lies over a view at this moment: selection, findings, names, distances, what the pointer does. */
public final class GlassDrawing {
    private final Session session;
    private final Showing showing;
    private final Viewpoint viewpoint;
    private final Theme theme;
    private final Pointing pointing;
    private final Typeface typeface = new Typeface();
    private List<Bounds> covered = List.of();

    public GlassDrawing(Session session, Showing showing, Viewpoint viewpoint, Theme theme, Pointing pointing) {
        this.session = session;
        this.showing = showing;
        this.viewpoint = viewpoint;
        this.theme = theme;
        this.pointing = pointing;
    }

    public Glass glass() {
        return new Glass(viewpoint.now(), theme.textPercent().get() / 100.0);
    }

    /**
     * Says what lies over the view.
     *
     * @param parts in the view (px)
     * @return whether this is something new
     */
    public boolean cover(List<Rectangle2D> parts) {
        List<Bounds> now = parts.stream()
                .map(part -> new Bounds(
                        part.getMinX() / ScreenCanvas.PIXELS,
                        part.getMinY() / ScreenCanvas.PIXELS,
                        part.getMaxX() / ScreenCanvas.PIXELS,
                        part.getMaxY() / ScreenCanvas.PIXELS))
                .toList();
        boolean changed = !now.equals(covered);
        covered = now;
        return changed;
    }

    public List<Shape> shapes() {
        boolean xRay = showing.sight().get().xRay();
        Over over = new Over(
                session.now(),
                showing.picker(session),
                unit -> !xRay || session.selection().holds(unit),
                session.selection().units().get(),
                session.selection().finding().get(),
                showing.shown(),
                pointing.hovered(),
                pointing.naming(),
                pointing.catches(),
                pointing.clearances(),
                showing.distances(),
                pointing.begun(),
                pointing.frame(),
                covered);
        List<Shape> shapes = new ArrayList<>(WireMarks.of(
                glass(), session.now().scene(), session.selection().wires().get()));
        shapes.addAll(Marks.of(glass(), over, typeface));
        pointing.hint()
                .ifPresent(words -> shapes.addAll(
                        HintLook.shapes(glass(), typeface, words, viewpoint.coveredTop() / ScreenCanvas.PIXELS)));
        return shapes;
    }
}
