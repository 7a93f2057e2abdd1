package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.LimitBar;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.look.VerdictSign;
import org.shelterwright.app.sheet.Flow;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.scene.Scene;

/** One row of the ledger on paper: sign and word, what it is about, its bar with the fence, and its figures. */
public final class RowBlock {

    private static final double TEXT = 2.2;
    private static final double SMALL = 1.8;
    private static final double SMALL_LINE = 3.7;
    private static final double TEXT_LINE = 4.2;
    private static final double WORD = 22;
    private static final double WIDTH = 63;
    private static final double BAR = 91;
    private static final double USE = 147;
    private static final double SIGN = 1.9;

    private final Typeface typeface;
    private final Function<List<String>, String> names;

    RowBlock(Typeface typeface, Scene scene) {
        this(typeface, units -> RowText.names(units, scene));
    }

    /** @param names the names of things by their ids, in one text */
    public RowBlock(Typeface typeface, Function<List<String>, String> names) {
        this.typeface = typeface;
        this.names = names;
    }

    /** The count of each verdict that there is, with its sign. */
    public List<Shape> counts(double left, double y, Ledger ledger) {
        List<Shape> shapes = new ArrayList<>();
        double x = left;
        for (Verdict verdict : Verdict.values()) {
            long count = ledger.count(verdict);
            if (count > 0) {
                shapes.addAll(VerdictSign.shapes(verdict, new Spot(x + 2.8, y), 2.8));
                Label label = Lettering.in(
                        Lettering.bold(count + " " + verdict.word(), new Spot(x + 7.4, y + 1.5), 3),
                        VerdictSign.colour(verdict));
                shapes.add(label);
                x += 7.4 + typeface.width(label) + 9;
            }
        }
        return shapes;
    }

    /** Names of the columns. */
    public void head(Flow flow) {
        flow.add(4.4, top -> {
            double y = top + 2.4;
            double x = flow.left();
            return List.of(
                    Lettering.muted("Verdict", new Spot(x, y), SMALL),
                    Lettering.muted("Limit, units, load state, source", new Spot(x + WORD + 6, y), SMALL),
                    Lettering.muted("Use", new Spot(x + USE, y), SMALL).with(Align.END),
                    Lettering.muted("Demand / capacity", new Spot(flow.right(), y), SMALL)
                            .with(Align.END));
        });
    }

    public void add(Flow flow, RowGroup group, String mark, double closeShare) {
        Row row = group.row();
        List<String> title = new Wrap(typeface, Typeface.sizeOf(TEXT), Weight.MEDIUM).lines(row.title(), WIDTH - 2);
        Wrap small = new Wrap(typeface, Typeface.sizeOf(SMALL), Weight.REGULAR);
        String units = names.apply(group.units());
        List<String> lines =
                new ArrayList<>(small.lines(units.isEmpty() ? row.state() : units + "; " + row.state(), WIDTH));
        lines.addAll(small.lines(row.source().text(), WIDTH));
        double height = Math.max(10.4, 1.2 + TEXT_LINE * title.size() + SMALL_LINE * lines.size() + 1.4);
        flow.add(height, top -> {
            List<Shape> shapes = new ArrayList<>(head(flow, top, row, mark));
            double x = flow.left() + WORD + 6;
            for (int i = 0; i < title.size(); i++) {
                shapes.add(Lettering.of(title.get(i), new Spot(x, top + 4 + TEXT_LINE * i), TEXT)
                        .with(Weight.MEDIUM));
            }
            double under = top + 3.8 + TEXT_LINE * title.size();
            for (int i = 0; i < lines.size(); i++) {
                shapes.add(Lettering.muted(lines.get(i), new Spot(x, under + SMALL_LINE * i), SMALL));
            }
            figures(shapes, flow, top, row, closeShare);
            shapes.add(Lines.of(
                    Pen.of(0.18, Role.LINE.colour()),
                    new Spot(flow.left(), top + height),
                    new Spot(flow.right(), top + height)));
            return shapes;
        });
    }

    /** The mark of a finding before its sentence. */
    List<Shape> mark(Flow flow, double top, String mark) {
        return List.of(Lettering.muted(mark, new Spot(flow.left(), top + 3.4), TEXT));
    }

    /** Sign, mark and title before a sentence. */
    List<Shape> sentenceHead(Flow flow, double top, Row row, String mark) {
        List<Shape> shapes =
                new ArrayList<>(VerdictSign.shapes(row.verdict(), new Spot(flow.left() + 2, top + 2.4), SIGN));
        shapes.add(Lettering.muted(mark, new Spot(flow.left() + 5, top + 3.4), TEXT));
        String units = names.apply(row.units());
        String title = units.isEmpty() ? row.title() : row.title() + ": " + units;
        Wrap wrap = new Wrap(typeface, Typeface.sizeOf(TEXT), Weight.MEDIUM);
        shapes.add(Lettering.of(
                        wrap.shortened(title, flow.right() - flow.left() - 12),
                        new Spot(flow.left() + 12, top + 3.4),
                        TEXT)
                .with(Weight.MEDIUM));
        return shapes;
    }

    private List<Shape> head(Flow flow, double top, Row row, String mark) {
        double x = flow.left();
        List<Shape> shapes = new ArrayList<>(VerdictSign.shapes(row.verdict(), new Spot(x + 2, top + 3.1), SIGN));
        shapes.add(Lettering.in(
                Lettering.of(row.verdict().word(), new Spot(x + 5.4, top + 4), SMALL)
                        .with(Weight.MEDIUM),
                VerdictSign.colour(row.verdict())));
        if (!mark.isEmpty()) {
            shapes.add(Lettering.muted(mark, new Spot(x + 5.4, top + 7.7), SMALL));
        }
        return shapes;
    }

    private void figures(List<Shape> shapes, Flow flow, double top, Row row, double closeShare) {
        double x = flow.left();
        if (row.verdict() == Verdict.NOT_ASSESSED) {
            shapes.addAll(LimitBar.shapes(new Spot(x + BAR, top + 3.2), 0, row.verdict(), closeShare));
            shapes.add(Lettering.in(
                    Lettering.of("data missing", new Spot(flow.right(), top + 4), SMALL)
                            .with(Align.END),
                    Role.NOT_ASSESSED.colour()));
            return;
        }
        Double use = row.use();
        if (use == null || RowText.plain(row)) {
            shapes.add(Lettering.muted("holds, nothing to measure", new Spot(flow.right(), top + 4), SMALL)
                    .with(Align.END));
            return;
        }
        shapes.addAll(LimitBar.shapes(new Spot(x + BAR, top + 3.2), use, row.verdict(), closeShare));
        if (row.unit().isEmpty() && row.capacity() != null && row.capacity() == 0) {
            shapes.add(Lettering.of("does not hold", new Spot(flow.right(), top + 4), TEXT)
                    .with(Align.END));
            return;
        }
        shapes.add(Lettering.in(
                Lettering.bold(RowText.use(row), new Spot(x + USE, top + 4), TEXT)
                        .with(Align.END),
                row.verdict() == Verdict.MET ? Role.TEXT.colour() : VerdictSign.colour(row.verdict())));
        shapes.add(Lettering.of(RowText.figures(row), new Spot(flow.right(), top + 4), TEXT)
                .with(Align.END));
        shapes.add(Lettering.muted("margin " + RowText.margin(row), new Spot(flow.right(), top + 8), SMALL)
                .with(Align.END));
    }
}
