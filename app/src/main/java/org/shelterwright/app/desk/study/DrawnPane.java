package org.shelterwright.app.desk.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.geometry.Orientation;
import javafx.scene.canvas.Canvas;
import javafx.scene.layout.Region;
import org.shelterwright.app.desk.paint.ScreenCanvas;
import org.shelterwright.app.desk.paint.Worn;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;

/** A drawing as large as there is room, in the colours of the theme. */
final class DrawnPane extends Region {
    private final Canvas sheet = new Canvas();
    private final Worn worn;
    private final Made drawing;
    private final Supplier<List<Shape>> over;
    private double scale = 1;
    private double left;

    /** Makes what is drawn for a room (mm); it need not take all of it. */
    @FunctionalInterface
    interface Made {
        Drawing of(double width, double height);
    }

    /**
     * @param drawing what is drawn, asked each time
     * @param over what is drawn over it, in its millimetres
     */
    DrawnPane(Theme theme, Made drawing, Supplier<List<Shape>> over) {
        this.worn = new Worn(theme);
        this.drawing = drawing;
        this.over = over;
        getChildren().add(sheet);
        theme.ground().addListener((observable, before, now) -> requestLayout());
        theme.textPercent().addListener((observable, before, now) -> requestLayout());
    }

    /** Tells of clicks, by their place on the drawing (mm). */
    void onClick(Consumer<Spot> clicked) {
        setOnMouseClicked(event -> clicked.accept(new Spot(
                (event.getX() - left) / scale / ScreenCanvas.PIXELS, event.getY() / scale / ScreenCanvas.PIXELS)));
    }

    /** Where a place of the drawing (mm) is in this pane (px). */
    Spot seen(Spot place) {
        return new Spot(left + place.x() * scale * ScreenCanvas.PIXELS, place.y() * scale * ScreenCanvas.PIXELS);
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefHeight(double width) {
        Drawing model = drawing.of(width / ScreenCanvas.PIXELS, 0);
        return width <= 0 ? 400 : width * model.height() / model.width();
    }

    @Override
    protected void layoutChildren() {
        Drawing model = drawing.of(getWidth() / ScreenCanvas.PIXELS, getHeight() / ScreenCanvas.PIXELS);
        double width = model.width() * ScreenCanvas.PIXELS;
        double height = model.height() * ScreenCanvas.PIXELS;
        scale = Math.max(0.05, Math.min(getWidth() / width, getHeight() / height));
        left = Math.max(0, (getWidth() - width * scale) / 2);
        sheet.setWidth(getWidth());
        sheet.setHeight(getHeight());
        var context = sheet.getGraphicsContext2D();
        context.setTransform(1, 0, 0, 1, 0, 0);
        context.clearRect(0, 0, getWidth(), getHeight());
        context.setTransform(scale, 0, 0, scale, left, 0);
        List<Shape> shapes = new ArrayList<>(model.shapes());
        shapes.addAll(over.get());
        ScreenCanvas canvas = new ScreenCanvas(context, worn);
        shapes.forEach(shape -> shape.onto(canvas));
        context.setTransform(1, 0, 0, 1, 0, 0);
    }
}
