package org.shelterwright.app.desk.space.mark;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.look.VerdictSign;
import org.shelterwright.app.type.Typeface;

/** How a tag looks: a leader on a halo, a panel with rounded corners, a sign if it bears a verdict, and the words. */
final class TagLook {
    private static final double SIZE = 12.5;
    private static final double LEADING = 16;
    private static final double MARGIN = 9;
    private static final double SIGN = 20;
    private static final double CORNER = 0.9;
    private static final int ARC = 4;

    private final Glass glass;
    private final Typeface typeface;

    TagLook(Glass glass, Typeface typeface) {
        this.glass = glass;
        this.typeface = typeface;
    }

    double width(Tag tag) {
        double widest = 0;
        for (String line : tag.lines()) {
            widest = Math.max(widest, typeface.width(line, glass.sized(SIZE), Weight.SEMIBOLD));
        }
        return widest + 2 * glass.sized(MARGIN) + (tag.verdict() == null ? 0 : glass.sized(SIGN));
    }

    double height(Tag tag) {
        return glass.sized(LEADING) * tag.lines().size() + glass.sized(8);
    }

    /** Draws tags where there is room for them, leaders under panels; one that has no room says less, or is left out. */
    void draw(List<Tag> tags, TagPlacing placing, List<Shape> shapes) {
        List<Shape> panels = new ArrayList<>();
        for (Tag tag : tags) {
            Bounds bounds = null;
            for (Tag said = tag; said != null && bounds == null; said = said.shorter()) {
                bounds = placing.place(said.place(), width(said), height(said));
                if (bounds != null) {
                    shapes.addAll(leader(said, bounds));
                    panels.addAll(panel(said, bounds));
                }
            }
        }
        shapes.addAll(panels);
    }

    /** The leader, to be drawn under all tags. */
    List<Shape> leader(Tag tag, Bounds b) {
        Spot end = new Spot(
                Math.max(b.x0(), Math.min(b.x1(), tag.place().x())),
                Math.max(b.y0(), Math.min(b.y1(), tag.place().y())));
        return List.of(
                Lines.of(Pen.of(1, Role.PANEL.colour()), tag.place(), end),
                Lines.of(Pen.of(0.35, colour(tag)), tag.place(), end),
                new Circle(tag.place(), 0.8, colour(tag), Pen.of(0.25, Role.PANEL.colour())));
    }

    List<Shape> panel(Tag tag, Bounds b) {
        List<Shape> shapes = new ArrayList<>();
        Colour ground = tag.filled() ? Role.ACCENT.colour() : Role.RAISED.colour();
        shapes.add(new Polygon(rounded(b, CORNER), ground, Pen.of(0.35, colour(tag))));
        double x = b.x0() + glass.sized(MARGIN);
        if (tag.verdict() != null) {
            Spot middle = new Spot(x + glass.sized(5.5), b.y0() + glass.sized(4 + LEADING / 2));
            shapes.addAll(VerdictSign.shapes(tag.verdict(), middle, glass.sized(7)));
            x += glass.sized(SIGN);
        }
        double y = b.y0() + glass.sized(4 + LEADING / 2) + glass.sized(SIZE) * Typeface.CAPITAL / 2;
        for (String line : tag.lines()) {
            shapes.add(new Label(
                    line,
                    new Spot(x, y),
                    glass.sized(SIZE),
                    Weight.SEMIBOLD,
                    Align.START,
                    0,
                    tag.filled() ? Role.PANEL.colour() : colour(tag)));
            y += glass.sized(LEADING);
        }
        return shapes;
    }

    static Colour colour(Tag tag) {
        return tag.verdict() == null ? Role.ACCENT.colour() : VerdictSign.colour(tag.verdict());
    }

    static List<Spot> rounded(Bounds b, double radius) {
        List<Spot> ring = new ArrayList<>();
        double[][] corners = {
            {b.x1() - radius, b.y1() - radius},
            {b.x0() + radius, b.y1() - radius},
            {b.x0() + radius, b.y0() + radius},
            {b.x1() - radius, b.y0() + radius}
        };
        for (int i = 0; i < 4; i++) {
            for (int step = 0; step <= ARC; step++) {
                double turn = Math.PI / 2 * (i + (double) step / ARC);
                ring.add(new Spot(corners[i][0] + radius * Math.cos(turn), corners[i][1] + radius * Math.sin(turn)));
            }
        }
        return ring;
    }
}
