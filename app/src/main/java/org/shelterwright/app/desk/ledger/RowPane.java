package org.shelterwright.app.desk.ledger;

import java.util.List;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import org.shelterwright.app.desk.style.Painter;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.LimitBar;
import org.shelterwright.app.look.VerdictSign;
import org.shelterwright.app.report.RowText;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;

/** A limit as one line: sign, title, number and use above; bar, demand and capacity below. */
final class RowPane extends Pane {
    /** Height for text of 100 % (px). */
    static final double HEIGHT = 52;

    private static final double MARGIN = 18;
    private static final double INSET = 24;
    private static final double BAR = 172;
    private static final double LEAST_BAR = 60;
    private static final double FIGURES = 122;
    private static final double PX_PER_MM = BAR / LimitBar.LENGTH;
    private static final List<String> VERDICTS = List.of("met", "close", "broken", "not-assessed");

    private final Theme theme;
    private final Canvas canvas = new Canvas();
    private final Label title = new Label();
    private final Label before = new Label();
    private final Label mark = new Label();
    private final Label use = new Label();
    private final Label figures = new Label();
    private double closeShare = 0.9;
    private Line.Entry entry;
    private boolean filled;

    RowPane(Theme theme, Line.Entry first) {
        this.theme = theme;
        entry = first;
        title.getStyleClass().add("medium");
        before.getStyleClass().add("caption");
        mark.getStyleClass().add("second");
        use.getStyleClass().add("strong");
        figures.getStyleClass().add("figure");
        getChildren().addAll(canvas, title, before, mark, use, figures);
        setMinWidth(0);
        theme.onChange(this::requestLayout);
    }

    /** Shows a row; one that is shown already costs nothing. */
    void show(Line.Entry shown, double share) {
        if (filled && shown.equals(entry) && share == closeShare) {
            return;
        }
        filled = true;
        entry = shown;
        closeShare = share;
        Row row = shown.row();
        int units = shown.group().rows().size();
        title.setText(units == 1 ? row.title() : row.title() + " (" + units + ")");
        before.setText(shown.accepted() ? "accepted" : shown.before());
        mark.setText(shown.mark());
        boolean open = row.verdict() == Verdict.NOT_ASSESSED;
        use.setText(open ? "–" : RowText.use(row));
        figures.setText(words(row));
        use.getStyleClass().removeAll(VERDICTS);
        use.getStyleClass().add(style(row.verdict()));
        figures.getStyleClass().removeAll(VERDICTS);
        if (open) {
            figures.getStyleClass().add(style(row.verdict()));
        }
        requestLayout();
    }

    private static String words(Row row) {
        if (row.verdict() == Verdict.NOT_ASSESSED) {
            return "data missing";
        }
        if (!RowText.plain(row)) {
            return RowText.figures(row);
        }
        return row.verdict() != Verdict.MET ? "does not hold" : row.doesNotApply() ? "does not apply" : "holds";
    }

    static String style(Verdict verdict) {
        return verdict.word().replace(' ', '-');
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double scale = theme.sized(1);
        double inset = MARGIN + INSET * scale;
        double right = width - MARGIN;
        double top = 8 * scale;
        double line = 18 * scale;
        double useWidth = place(use, right, top, line);
        double markWidth = place(mark, right - Math.max(useWidth, 34 * scale) - 8, top, line);
        double titleRight = right - Math.max(useWidth, 34 * scale) - 8 - markWidth - 8;
        double beforeWidth = Math.min(before.prefWidth(-1), Math.max(0, titleRight - inset));
        double titleWidth = Math.min(title.prefWidth(-1), Math.max(20, titleRight - inset - beforeWidth - 8));
        title.resizeRelocate(inset, top, titleWidth, line);
        before.resizeRelocate(inset + titleWidth + 8, top + scale, beforeWidth, line);
        double bar = Math.max(LEAST_BAR, Math.min(BAR * scale, right - inset - FIGURES * scale));
        double beyond = LimitBar.BEYOND * PX_PER_MM;
        double room = right - inset - bar - (passesFence() ? beyond + 4 : 8);
        String words = words(entry.row());
        figures.setText(words);
        if (figures.prefWidth(-1) > room && !RowText.bareFigures(entry.row()).isEmpty()) {
            figures.setText(RowText.bareFigures(entry.row()));
        }
        double figuresWidth = Math.min(figures.prefWidth(-1), room);
        figures.resizeRelocate(right - figuresWidth, top + line + 2 * scale, figuresWidth, line);
        canvas.relocate(0, 0);
        canvas.setWidth(inset + bar + beyond + 4);
        canvas.setHeight(getHeight());
        paint(inset, top + line + 10 * scale, bar, scale);
    }

    /** Whether its bar goes on behind the line of what is allowed. */
    private boolean passesFence() {
        Double used = entry.row().use();
        return !RowText.plain(entry.row()) && used != null && used > 1;
    }

    private double place(Label label, double right, double top, double line) {
        double wide = label.prefWidth(-1);
        label.resizeRelocate(right - wide, top, wide, line);
        return wide;
    }

    private void paint(double x, double y, double length, double scale) {
        GraphicsContext context = canvas.getGraphicsContext2D();
        context.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        Row row = entry.row();
        var ground = theme.ground().get();
        Painter painter = new Painter(context);
        painter.paint(VerdictSign.shapes(row.verdict(), new Spot(MARGIN + 8 * scale, 17 * scale), 6.8 * scale, ground));
        Double used = row.use();
        if (RowText.plain(row) && row.verdict() == Verdict.MET) {
            return;
        }
        double pxPerMm = PX_PER_MM * Math.min(scale, 1.4);
        context.save();
        context.scale(pxPerMm, pxPerMm);
        painter.paint(new LimitBar(length / pxPerMm, ground)
                .bar(new Spot(x / pxPerMm, y / pxPerMm), used == null ? 0 : used, row.verdict(), closeShare));
        context.restore();
    }

    @Override
    protected double computePrefHeight(double width) {
        return theme.sized(HEIGHT);
    }
}
