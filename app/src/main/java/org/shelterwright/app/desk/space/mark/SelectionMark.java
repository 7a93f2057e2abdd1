package org.shelterwright.app.desk.space.mark;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.space.Box;

/** Outlines of what is selected or under the pointer. */
final class SelectionMark {
    private SelectionMark() {}

    /** The outline of a selected unit on its halo. */
    static List<Shape> selected(Glass glass, List<Box> solids) {
        List<Spot> hull = glass.hull(solids);
        return List.of(
                new Polygon(hull, null, Pen.of(1.65, Role.PANEL.colour())),
                new Polygon(hull, null, Pen.of(0.75, Role.ACCENT.colour())));
    }

    /** The outline of the unit under the pointer. */
    static List<Shape> hovered(Glass glass, List<Box> solids) {
        return List.of(new Polygon(glass.hull(solids), null, Pen.of(0.5, Role.TEXT.colour())));
    }

    /** The name beside the pointer. */
    static List<Shape> name(Glass glass, Typeface typeface, String name, Spot pointer) {
        double size = glass.sized(12);
        double width = typeface.width(name, size, Weight.MEDIUM) + glass.sized(14);
        double height = glass.sized(22);
        double x = Math.min(pointer.x() + glass.sized(14), glass.bounds().x1() - width - 1);
        double y = Math.min(pointer.y() + glass.sized(16), glass.bounds().y1() - height - 1);
        List<Shape> shapes = new ArrayList<>();
        Bounds panel = new Bounds(x, y, x + width, y + height);
        shapes.add(new Polygon(TagLook.rounded(panel, 0.75), Role.RAISED.colour(), Pen.of(0.25, Role.LINES.colour())));
        shapes.add(new Label(
                name,
                new Spot(x + glass.sized(7), y + height / 2 + size * Typeface.CAPITAL / 2),
                size,
                Weight.MEDIUM,
                Align.START,
                0,
                Role.TEXT.colour()));
        return shapes;
    }

    /** The frame that is drawn over empty space to select what lies in it. */
    static Shape frame(Bounds bounds) {
        return Polygon.of(bounds, Role.ACCENT.colour().with(0.08), Pen.of(0.35, Role.ACCENT.colour()));
    }
}
