package org.shelterwright.app.sheet;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.LineType;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;

/**
 * The title block in the lower right corner of a drawing, with the data fields after ISO 7200:2004 (owner, number,
 * revision, date, sheet, title, approval, creator, type) and scale, projection symbol and unit.
 */
public final class TitleBlock {

    /** Width (mm); the greatest that ISO 7200 allows. */
    public static final double WIDTH = 180;

    /** Height (mm). */
    public static final double HEIGHT = 46;

    private static final Pen THICK = Pen.of(0.7, Role.TEXT.colour());
    private static final Pen THIN = Pen.of(0.25, Role.TEXT.colour());

    private final Typeface typeface;

    public TitleBlock(Typeface typeface) {
        this.typeface = typeface;
    }

    /**
     * What a title block says besides the particulars.
     *
     * @param number identification number
     * @param sheet such as "1 / 2"
     * @param scale such as "1:20"
     * @param program program, version and seed
     */
    public record Fields(
            String number,
            String type,
            String title,
            String supplement,
            String sheet,
            String scale,
            String size,
            String program) {}

    /** The block with its lower right corner at the corner of the drawing space. */
    public List<Shape> shapes(Spot corner, Fields fields, Particulars particulars) {
        double x = corner.x() - WIDTH;
        double y = corner.y() - HEIGHT;
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Polygon.of(new Bounds(x, y, corner.x(), corner.y()), Role.RAISED.colour(), THICK));
        cell(shapes, x, y, 64, 9, "Legal owner", particulars.owner(), Weight.REGULAR);
        cell(shapes, x + 64, y, 50, 9, "Document type", fields.type(), Weight.REGULAR);
        cell(shapes, x + 114, y, 44, 9, "Identification number", fields.number(), Weight.SEMIBOLD);
        cell(shapes, x + 158, y, 22, 9, "Revision", particulars.revision(), Weight.REGULAR);
        title(shapes, x, y + 9, 114, fields);
        cell(shapes, x + 114, y + 9, 34, 9, "Date of check", particulars.date().toString(), Weight.REGULAR);
        cell(shapes, x + 148, y + 9, 32, 9, "Sheet", fields.sheet(), Weight.REGULAR);
        cell(shapes, x + 114, y + 18, 22, 9, "Scale", fields.scale(), Weight.SEMIBOLD);
        cell(shapes, x + 136, y + 18, 22, 9, "Lengths in", "mm", Weight.REGULAR);
        cell(shapes, x + 158, y + 18, 22, 9, "Sheet size", fields.size(), Weight.REGULAR);
        cell(shapes, x, y + 27, 57, 9, "Created by", particulars.createdBy(), Weight.REGULAR);
        cell(shapes, x + 57, y + 27, 57, 9, "Approved by", particulars.approvedBy(), Weight.REGULAR);
        madeWith(shapes, x, y + 36, 114, fields.program());
        projection(shapes, new Bounds(x + 114, y + 27, corner.x(), corner.y()));
        return shapes;
    }

    private void cell(
            List<Shape> shapes,
            double x,
            double y,
            double width,
            double height,
            String name,
            String value,
            Weight weight) {
        shapes.add(Polygon.of(new Bounds(x, y, x + width, y + height), null, THIN));
        shapes.add(Lettering.muted(name, new Spot(x + 1.5, y + 2.9), 1.8));
        double size = Typeface.sizeOf(2.5);
        String fitting = new Wrap(typeface, size, weight).shortened(value, width - 3);
        shapes.add(Lettering.of(fitting, new Spot(x + 1.5, y + 7.4), 2.5).with(weight));
    }

    /** In one line if it fits, else in two smaller ones. */
    private void madeWith(List<Shape> shapes, double x, double y, double width, String value) {
        Wrap large = new Wrap(typeface, Typeface.sizeOf(2.5), Weight.REGULAR);
        if (large.shortened(value, width - 3).equals(value)) {
            cell(shapes, x, y, width, 10, "Made with", value, Weight.REGULAR);
            return;
        }
        shapes.add(Polygon.of(new Bounds(x, y, x + width, y + 10), null, THIN));
        shapes.add(Lettering.muted("Made with", new Spot(x + 1.5, y + 2.9), 1.8));
        Wrap small = new Wrap(typeface, Typeface.sizeOf(1.8), Weight.REGULAR);
        List<String> lines = small.lines(value, width - 3);
        String rest = String.join(" ", lines.subList(1, lines.size()));
        shapes.add(Lettering.of(lines.get(0), new Spot(x + 1.5, y + 5.9), 1.8));
        shapes.add(Lettering.of(small.shortened(rest, width - 3), new Spot(x + 1.5, y + 8.9), 1.8));
    }

    private void title(List<Shape> shapes, double x, double y, double width, Fields fields) {
        shapes.add(Polygon.of(new Bounds(x, y, x + width, y + 18), null, THIN));
        shapes.add(Lettering.muted("Title", new Spot(x + 1.5, y + 2.9), 1.8));
        String title = new Wrap(typeface, Typeface.sizeOf(3.5), Weight.SEMIBOLD).shortened(fields.title(), width - 3);
        String supplement =
                new Wrap(typeface, Typeface.sizeOf(2.5), Weight.REGULAR).shortened(fields.supplement(), width - 3);
        shapes.add(Lettering.bold(title, new Spot(x + 1.5, y + 9.3), 3.5));
        shapes.add(Lettering.of(supplement, new Spot(x + 1.5, y + 15.2), 2.5));
    }

    /**
     * The symbol of first-angle projection: a cone with its small end at the left, and at its right the view from the left,
     * in which both ends are seen.
     */
    private static void projection(List<Shape> shapes, Bounds cell) {
        shapes.add(Polygon.of(cell, null, THIN));
        shapes.add(Lettering.muted("Projection", new Spot(cell.x0() + 1.5, cell.y0() + 2.9), 1.8));
        shapes.add(Lettering.of("first angle", new Spot(cell.x0() + 1.5, cell.y1() - 2.6), 2.5));
        Pen axis = Pen.of(0.18, Role.TEXT.colour()).with(LineType.LONG_DASH_DOT);
        Pen line = Pen.of(0.35, Role.TEXT.colour());
        double y = cell.centre().y();
        double x = cell.x0() + 30;
        shapes.add(new Polygon(
                List.of(new Spot(x, y - 2.5), new Spot(x + 12, y - 5), new Spot(x + 12, y + 5), new Spot(x, y + 2.5)),
                null,
                line));
        shapes.add(new Circle(new Spot(x + 24, y), 5, null, line));
        shapes.add(new Circle(new Spot(x + 24, y), 2.5, null, line));
        shapes.add(Lines.of(axis, new Spot(x - 2, y), new Spot(x + 31, y)));
        shapes.add(Lines.of(axis, new Spot(x + 24, y - 7), new Spot(x + 24, y + 7)));
    }
}
