package org.shelterwright.app.elevation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.inside.InPlace;
import org.shelterwright.layouts.ledger.stowage.FilledPlace;

/** A stowage place seen from above and from its front, with the pieces in it by their codes. Not to scale between places. */
public final class PlaceSketch {
    private static final double TEXT = 1.5;

    private final Codes codes;
    private final FilledPlace place;

    public PlaceSketch(Codes codes, FilledPlace place) {
        this.codes = codes;
        this.place = place;
    }

    /** Both views within a frame on paper (mm). */
    public List<Shape> shapes(Bounds paper) {
        double half = paper.width() / 2;
        List<Shape> shapes = new ArrayList<>();
        shapes.addAll(view(new Bounds(paper.x0(), paper.y0(), paper.x0() + half - 3, paper.y1()), Axis.X, "from above"));
        shapes.addAll(view(new Bounds(paper.x0() + half + 3, paper.y0(), paper.x1(), paper.y1()), Axis.Z, "from the front"));
        return shapes;
    }

    /** Across the paper y, seen from the front with the left of the unit at the right; up the paper the given axis. */
    private List<Shape> view(Bounds paper, Axis up, String title) {
        List<Shape> shapes = new ArrayList<>();
        Box inside = place.stowage().inside();
        double width = inside.extent(Axis.Y);
        double height = inside.extent(up);
        double room = paper.height() - 5;
        double scale = Math.min(paper.width() / width, room / height);
        double x0 = paper.centre().x() - scale * width / 2;
        double y0 = paper.y0() + (room - scale * height) / 2;
        Bounds frame = new Bounds(x0, y0, x0 + scale * width, y0 + scale * height);
        shapes.add(Polygon.of(frame, Role.PANEL.colour(), Pen.of(0.35, Role.TEXT.colour())));
        List<InPlace> order = new ArrayList<>(place.pieces());
        order.sort(up == Axis.X
                ? Comparator.comparingInt((InPlace one) -> one.box().z1())
                : Comparator.comparingInt((InPlace one) -> one.box().x1()));
        for (InPlace piece : order) {
            Box box = piece.box();
            double left = x0 + scale * (box.y0() - inside.y0());
            double right = x0 + scale * (box.y1() - inside.y0());
            double top = up == Axis.X
                    ? y0 + scale * (box.x0() - inside.x0())
                    : y0 + scale * (inside.z1() - box.z1());
            double foot = up == Axis.X
                    ? y0 + scale * (box.x1() - inside.x0())
                    : y0 + scale * (inside.z1() - box.z0());
            shapes.add(Polygon.of(
                    new Bounds(left, top, right, foot), Role.RAISED.colour(), Pen.of(0.25, Role.TEXT.colour())));
            if (right - left > 6 && foot - top > 2) {
                shapes.add(Lettering.of(
                                codes.piece(piece.id()), new Spot((left + right) / 2, (top + foot) / 2 + TEXT / 2), TEXT)
                        .with(Align.MIDDLE));
            }
        }
        shapes.add(Lettering.muted(title, new Spot(paper.centre().x(), paper.y1() - 0.6), TEXT).with(Align.MIDDLE));
        return shapes;
    }
}
