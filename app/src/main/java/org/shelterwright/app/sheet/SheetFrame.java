package org.shelterwright.app.sheet;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;

/**
 * The frame of a sheet, its centring marks and its grid references.
 *
 * <p>Source: ISO 5457:1999, clauses 4 and 5 (from memory): frame and centring marks 0.7 mm, marks 10 mm beyond the
 * grid frame, fields of 50 mm counted from the centring marks, letters from top to bottom, figures from left to right.
 */
public final class SheetFrame {

    private static final Pen FRAME = Pen.of(0.7, Role.TEXT.colour());
    private static final Pen THIN = Pen.of(0.35, Role.TEXT.colour());
    private static final double FIELD = 50;
    private static final double STRIP = 5;
    private static final double MARK = 10;
    private static final String LETTERS = "ABCDEFGHJKLMN";

    private SheetFrame() {}

    public static List<Shape> shapes(SheetSize size) {
        Bounds frame = size.space();
        Bounds grid = frame.grown(STRIP);
        double cx = size.width() / 2;
        double cy = size.height() / 2;
        List<Shape> shapes = new ArrayList<>();
        fields(shapes, size, frame, grid);
        shapes.add(Polygon.of(grid, null, THIN));
        shapes.add(Polygon.of(frame, null, FRAME));
        shapes.add(Lines.of(FRAME, new Spot(cx, 0), new Spot(cx, MARK + STRIP)));
        shapes.add(Lines.of(FRAME, new Spot(cx, size.height()), new Spot(cx, size.height() - MARK - STRIP)));
        shapes.add(Lines.of(FRAME, new Spot(0, cy), new Spot(frame.x0() + STRIP, cy)));
        shapes.add(Lines.of(FRAME, new Spot(size.width(), cy), new Spot(frame.x1() - STRIP, cy)));
        return shapes;
    }

    private static void fields(List<Shape> shapes, SheetSize size, Bounds frame, Bounds grid) {
        List<Double> xs = cuts(size.width() / 2, frame.x0(), frame.x1());
        for (int i = 0; i + 1 < xs.size(); i++) {
            double middle = (xs.get(i) + xs.get(i + 1)) / 2;
            String number = Integer.toString(i + 1);
            shapes.add(letter(number, new Spot(middle, (grid.y0() + frame.y0()) / 2)));
            shapes.add(letter(number, new Spot(middle, (grid.y1() + frame.y1()) / 2)));
            if (i > 0) {
                shapes.add(Lines.of(THIN, new Spot(xs.get(i), grid.y0()), new Spot(xs.get(i), frame.y0())));
                shapes.add(Lines.of(THIN, new Spot(xs.get(i), grid.y1()), new Spot(xs.get(i), frame.y1())));
            }
        }
        List<Double> ys = cuts(size.height() / 2, frame.y0(), frame.y1());
        for (int i = 0; i + 1 < ys.size(); i++) {
            double middle = (ys.get(i) + ys.get(i + 1)) / 2;
            String letter = LETTERS.substring(i, i + 1);
            shapes.add(letter(letter, new Spot((grid.x0() + frame.x0()) / 2, middle)));
            shapes.add(letter(letter, new Spot((grid.x1() + frame.x1()) / 2, middle)));
            if (i > 0) {
                shapes.add(Lines.of(THIN, new Spot(grid.x0(), ys.get(i)), new Spot(frame.x0(), ys.get(i))));
                shapes.add(Lines.of(THIN, new Spot(grid.x1(), ys.get(i)), new Spot(frame.x1(), ys.get(i))));
            }
        }
    }

    private static Shape letter(String text, Spot middle) {
        return Lettering.of(text, middle.plus(0, 1.25), 2.5).with(Align.MIDDLE);
    }

    /** The ends of the frame, and between them every field's border; what is left over joins the last fields. */
    private static List<Double> cuts(double centre, double from, double to) {
        List<Double> cuts = new ArrayList<>();
        cuts.add(from);
        double first = centre - Math.floor((centre - from) / FIELD) * FIELD;
        for (double at = first; at < to; at += FIELD) {
            if (at - from >= FIELD / 2 && to - at >= FIELD / 2) {
                cuts.add(at);
            }
        }
        cuts.add(to);
        return cuts;
    }
}
