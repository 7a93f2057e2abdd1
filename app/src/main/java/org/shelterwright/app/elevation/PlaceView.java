package org.shelterwright.app.elevation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.catalog.item.Stowage;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.inside.InPlace;

/**
 * One view of a stowage place, as large as its paper allows. Across the paper lies y, seen from the front with the left of the
 * unit at the right; up the paper z, or from above down the paper x.
 */
public final class PlaceView {
    private static final double LEAST_WIDTH = 6;
    private static final double LEAST_HEIGHT = 2;

    /** Width of a letter against the height of capitals. */
    private static final double LETTER = 0.8;

    private final Stowage stowage;
    private final Bounds paper;
    private final Axis up;
    private final double text;
    private final double scale;

    /**
     * @param paper where it lies (mm)
     * @param up z seen from the front, x seen from above
     * @param text height of capitals (mm)
     */
    public PlaceView(Stowage stowage, Bounds paper, Axis up, double text) {
        this.stowage = stowage;
        this.paper = paper;
        this.up = up;
        this.text = text;
        scale = Math.min(
                paper.width() / stowage.inside().extent(Axis.Y),
                (paper.height() - 3.3 * text) / stowage.inside().extent(up));
    }

    /** Length on paper (mm) of a micrometre. */
    public double scale() {
        return scale;
    }

    public Axis up() {
        return up;
    }

    /** The rectangle of a cuboid in the frame of the item. */
    public Bounds bounds(Box box) {
        Box inside = stowage.inside();
        double x0 = paper.centre().x() - scale * inside.extent(Axis.Y) / 2;
        double y0 = paper.y0() + (paper.height() - 3.3 * text - scale * inside.extent(up)) / 2;
        double left = x0 + scale * (box.y0() - inside.y0());
        double right = x0 + scale * (box.y1() - inside.y0());
        return up == Axis.X
                ? new Bounds(left, y0 + scale * (box.x0() - inside.x0()), right, y0 + scale * (box.x1() - inside.x0()))
                : new Bounds(left, y0 + scale * (inside.z1() - box.z1()), right, y0 + scale * (inside.z1() - box.z0()));
    }

    /** Pieces from the farthest to the nearest. */
    public List<InPlace> order(List<InPlace> pieces) {
        List<InPlace> order = new ArrayList<>(pieces);
        order.sort(
                up == Axis.X
                        ? Comparator.comparingInt((InPlace one) -> one.box().z1())
                        : Comparator.comparingInt((InPlace one) -> one.box().x1()));
        return order;
    }

    /**
     * The view with its title. A name that a nearer piece would cover is left out.
     *
     * @param words what stands on a piece, for the width that there is (mm)
     */
    public List<Shape> shapes(String title, List<InPlace> pieces, Function<InPlace, String> words) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Polygon.of(bounds(stowage.inside()), Role.PANEL.colour(), Pen.of(0.35, Role.TEXT.colour())));
        List<InPlace> order = order(pieces);
        for (int i = 0; i < order.size(); i++) {
            Bounds box = bounds(order.get(i).box());
            shapes.add(Polygon.of(box, Role.RAISED.colour(), Pen.of(0.25, Role.TEXT.colour())));
            String name = words.apply(order.get(i));
            Bounds named = Bounds.around(box.centre(), name.length() * LETTER * text, text);
            boolean free = order.subList(i + 1, order.size()).stream()
                    .noneMatch(later -> bounds(later.box()).overlaps(named));
            if (free && box.width() > LEAST_WIDTH && box.height() > LEAST_HEIGHT) {
                Spot at = new Spot(box.centre().x(), box.centre().y() + text / 2);
                shapes.add(Lettering.of(name, at, text).with(Align.MIDDLE));
            }
        }
        shapes.add(Lettering.muted(title, new Spot(paper.centre().x(), paper.y1() - 0.4 * text), text)
                .with(Align.MIDDLE));
        return shapes;
    }
}
