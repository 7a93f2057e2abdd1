package org.shelterwright.app.elevation;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;

/** What limits a bay, in the words of the ledger, beside its elevation. */
public final class BayLimits {
    private static final double TEXT = 1.8;
    private static final double LINE = 4.1;
    private static final double WIDTH = 118;
    private static final double DEMAND = 74;
    private static final double CAPACITY = 98;
    private static final Pen THIN = Pen.of(0.18, Role.TEXT.colour());

    /**
     * One limit.
     *
     * @param title what is limited
     * @param demand with its unit; empty if there is nothing to measure
     * @param capacity with its unit
     * @param verdict in a word
     */
    public record Line(String title, String demand, String capacity, String verdict) {}

    private final Typeface typeface;

    BayLimits(Typeface typeface) {
        this.typeface = typeface;
    }

    /** The table, with its left upper corner given; what does not fit above the lowest line is counted in one line. */
    List<Shape> shapes(List<Line> lines, double left, double top, double lowest) {
        List<Shape> shapes = new ArrayList<>();
        if (lines.isEmpty() || top + 2 * LINE > lowest) {
            return shapes;
        }
        row(shapes, new Line("Limit", "is", "may be", ""), left, top, Weight.SEMIBOLD);
        shapes.add(Lines.of(THIN, new Spot(left, top + 1.6), new Spot(left + WIDTH, top + 1.6)));
        double y = top + 5;
        for (int i = 0; i < lines.size(); i++) {
            if (y + LINE > lowest && i + 1 < lines.size()) {
                shapes.add(Lettering.muted(
                        "and " + (lines.size() - i) + " more: see the ledger", new Spot(left, y), TEXT));
                break;
            }
            row(shapes, lines.get(i), left, y, Weight.REGULAR);
            y += LINE;
        }
        return shapes;
    }

    private void row(List<Shape> shapes, Line line, double left, double y, Weight weight) {
        String title = new Wrap(typeface, Typeface.sizeOf(TEXT), weight).shortened(line.title(), DEMAND - 22);
        shapes.add(Lettering.of(title, new Spot(left, y), TEXT).with(weight));
        shapes.add(Lettering.of(line.demand(), new Spot(left + DEMAND, y), TEXT)
                .with(weight)
                .with(Align.END));
        shapes.add(Lettering.of(line.capacity(), new Spot(left + CAPACITY, y), TEXT)
                .with(weight)
                .with(Align.END));
        shapes.add(Lettering.of(line.verdict(), new Spot(left + CAPACITY + 5, y), TEXT)
                .with(weight));
    }
}
