package org.shelterwright.app.desk.space;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.space.mark.Glass;
import org.shelterwright.app.desk.space.mark.Marks;
import org.shelterwright.app.desk.space.mark.Over;
import org.shelterwright.app.desk.space.mark.WireMarks;
import org.shelterwright.app.desk.style.Theme;
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
                pointing.frame());
        List<Shape> shapes = new ArrayList<>(WireMarks.of(
                glass(), session.now().scene(), session.selection().wires().get()));
        shapes.addAll(Marks.of(glass(), over, typeface));
        return shapes;
    }
}
