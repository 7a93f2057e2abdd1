package org.shelterwright.app.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
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
    private static final double LINE = 3.8;
    private static final double HEAD = 5.4;
    private static final double PAD = 0.8;
    private static final double TEXT_PAD = 2;

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
        double height =
                HEAD + (columns.stream().allMatch(column -> column.lower().isEmpty()) ? 0 : LINE);
        flow.add(height, top -> {
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
                    new Spot(flow.left(), top + height - 0.8),
                    new Spot(x, top + height - 0.8)));
            return shapes;
        });
    }

    /**
     * A row; it begins a new page with the head where needed. Texts are set in as many lines as they need.
     *
     * @param strong true for sums
     */
    public void row(Flow flow, List<String> cells, boolean strong) {
        row(flow, cells, strong, top -> List.of());
    }

    /**
     * A row with something drawn over it.
     *
     * @param over given the place of the upper edge of the row
     */
    public void row(Flow flow, List<String> cells, boolean strong, Function<Double, List<Shape>> over) {
        Weight weight = strong ? Weight.SEMIBOLD : Weight.REGULAR;
        Wrap wrap = new Wrap(typeface, Typeface.sizeOf(TEXT), weight);
        List<List<String>> lines = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            lines.add(wrap.lines(cells.get(i), columns.get(i).width() - PAD - TEXT_PAD));
        }
        double height = ROW + LINE * (lines.stream().mapToInt(List::size).max().orElse(1) - 1);
        if (!flow.fits(height)) {
            flow.newPage();
            head(flow);
        }
        flow.add(height, top -> {
            List<Shape> shapes = shapes(flow, top, height, lines, weight);
            shapes.addAll(over.apply(top));
            return shapes;
        });
    }

    private List<Shape> shapes(Flow flow, double top, double height, List<List<String>> lines, Weight weight) {
        List<Shape> shapes = new ArrayList<>();
        double x = flow.left();
        double end = x + columns.stream().mapToDouble(Column::width).sum();
        if (weight == Weight.SEMIBOLD) {
            shapes.add(Polygon.of(new Bounds(x, top, end, top + height), Role.PANEL.colour(), null));
        }
        for (int i = 0; i < lines.size(); i++) {
            for (int line = 0; line < lines.get(i).size(); line++) {
                String text = lines.get(i).get(line);
                if (!text.isEmpty()) {
                    shapes.add(cell(columns.get(i), x, top + 3.4 + LINE * line, text, weight));
                }
            }
            x += columns.get(i).width();
        }
        Pen hairline = Pen.of(0.13, Role.LINE.colour());
        shapes.add(Lines.of(hairline, new Spot(flow.left(), top + height), new Spot(end, top + height)));
        return shapes;
    }

    private static Label cell(Column column, double x, double base, String text, Weight weight) {
        double at = column.figures() ? x + column.width() - PAD : x + TEXT_PAD;
        return Lettering.of(text, new Spot(at, base), TEXT)
                .with(weight)
                .with(column.figures() ? Align.END : Align.START);
    }
}
