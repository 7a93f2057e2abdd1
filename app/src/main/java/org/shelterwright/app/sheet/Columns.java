package org.shelterwright.app.sheet;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;

/** A table on paper: columns of set widths, figures to the right, its head again on each new page. */
public final class Columns {

    private static final double TEXT = 2;
    private static final double ROW = 4.9;
    private static final double HEAD = 9;

    private final Typeface typeface;
    private final List<Column> columns;

    /**
     * A column.
     *
     * @param upper first line of its head
     * @param lower second line of its head, such as a unit
     * @param width (mm)
     */
    public record Column(String upper, String lower, double width, boolean figures) {}

    public Columns(Typeface typeface, List<Column> columns) {
        this.typeface = typeface;
        this.columns = List.copyOf(columns);
    }

    public void head(Flow flow) {
        flow.add(HEAD, top -> {
            List<Shape> shapes = new ArrayList<>();
            double x = flow.left();
            for (Column column : columns) {
                shapes.add(cell(column, x, top + 3, column.upper(), Weight.SEMIBOLD));
                if (!column.lower().isEmpty()) {
                    shapes.add(Lettering.in(
                            cell(column, x, top + 6.6, column.lower(), Weight.REGULAR), Role.MUTED.colour()));
                }
                x += column.width();
            }
            shapes.add(Lines.of(
                    Pen.of(0.3, Role.TEXT.colour()),
                    new Spot(flow.left(), top + HEAD - 0.8),
                    new Spot(x, top + HEAD - 0.8)));
            return shapes;
        });
    }

    /**
     * A row; it begins a new page with the head where needed.
     *
     * @param strong true for sums
     */
    public void row(Flow flow, List<String> cells, boolean strong) {
        if (!flow.fits(ROW)) {
            flow.newPage();
            head(flow);
        }
        flow.add(ROW, top -> {
            List<Shape> shapes = new ArrayList<>();
            double x = flow.left();
            double end =
                    flow.left() + columns.stream().mapToDouble(Column::width).sum();
            if (strong) {
                shapes.add(Polygon.of(new Bounds(x, top, end, top + ROW), Role.PANEL.colour(), null));
            }
            for (int i = 0; i < cells.size(); i++) {
                Column column = columns.get(i);
                if (!cells.get(i).isEmpty()) {
                    shapes.add(cell(column, x, top + 3.4, cells.get(i), strong ? Weight.SEMIBOLD : Weight.REGULAR));
                }
                x += column.width();
            }
            shapes.add(Lines.of(
                    Pen.of(0.13, Role.LINE.colour()), new Spot(flow.left(), top + ROW), new Spot(end, top + ROW)));
            return shapes;
        });
    }

    private Label cell(Column column, double x, double base, String text, Weight weight) {
        String fitting = new Wrap(typeface, Typeface.sizeOf(TEXT), weight).shortened(text, column.width() - 1.6);
        double at = column.figures() ? x + column.width() - 0.8 : x + 0.8;
        return Lettering.of(fitting, new Spot(at, base), TEXT)
                .with(weight)
                .with(column.figures() ? Align.END : Align.START);
    }
}
