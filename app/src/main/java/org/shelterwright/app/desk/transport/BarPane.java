package org.shelterwright.app.desk.transport;

import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import org.shelterwright.app.desk.style.Painter;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.LimitBar;
import org.shelterwright.layouts.ledger.Verdict;

/** A bar with its title above and its figures beside it. */
final class BarPane extends Pane {
    private static final double HEIGHT = 38;
    private static final double FIGURES = 96;
    private static final double LEAST_BAR = 54;
    private static final double BEYOND = 18;
    private static final double MOST_BAR = 150;

    private final Theme theme;
    private final Canvas canvas = new Canvas();
    private final Label title = new Label();
    private final Label figure = new Label();
    private final double closeShare;
    private Bar bar;

    BarPane(Theme theme, Bar bar, double closeShare) {
        this.theme = theme;
        this.bar = bar;
        this.closeShare = closeShare;
        title.getStyleClass().add("second");
        figure.getStyleClass().add("figure");
        getChildren().addAll(canvas, title, figure);
        setMinWidth(theme.sized(LEAST_BAR + FIGURES));
        setPrefWidth(theme.sized(MOST_BAR + FIGURES));
        setMinHeight(theme.sized(HEIGHT));
        setPrefHeight(theme.sized(HEIGHT));
        show(bar);
    }

    void show(Bar shown) {
        bar = shown;
        title.setText(shown.title());
        figure.setText(shown.figure());
        String style = switch (shown.verdict()) {
            case BROKEN -> "broken";
            case CLOSE -> "close";
            case NOT_ASSESSED -> "not-assessed";
            case MET -> "met";
        };
        figure.getStyleClass().setAll("label", "figure");
        if (shown.verdict() != Verdict.MET) {
            figure.getStyleClass().add(style);
        }
        setAccessibleText(
                shown.title() + ", " + shown.figure() + ", " + shown.verdict().word());
        requestLayout();
    }

    @Override
    protected void layoutChildren() {
        double line = theme.sized(17);
        title.resizeRelocate(0, 0, getWidth(), line);
        double wide = Math.max(theme.sized(LEAST_BAR), getWidth() - theme.sized(FIGURES) - BEYOND + 6);
        figure.resizeRelocate(wide + BEYOND, line, Math.max(20, getWidth() - wide - BEYOND), line);
        canvas.relocate(0, line);
        canvas.setWidth(wide + 12);
        canvas.setHeight(theme.sized(20));
        GraphicsContext context = canvas.getGraphicsContext2D();
        context.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        double pxPerMm = 172 / LimitBar.LENGTH * Math.min(theme.sized(1), 1.4);
        Double used = bar.use();
        context.save();
        context.scale(pxPerMm, pxPerMm);
        new Painter(context)
                .paint(new LimitBar(wide / pxPerMm, theme.ground().get())
                        .bar(new Spot(0, 8 / pxPerMm), used == null ? 0 : used, bar.verdict(), closeShare));
        context.restore();
    }
}
