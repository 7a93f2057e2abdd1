package org.shelterwright.app.desk.paint;

import java.util.List;
import java.util.function.Function;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.TextAlignment;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.style.Fonts;
import org.shelterwright.app.drawing.Canvas;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;

/** Puts shapes onto a canvas of the window: a millimetre of the drawing model is four pixels. */
public final class ScreenCanvas implements Canvas {
    /** Pixels for a millimetre: the edge of a solid, 0.28 mm on paper, is 1.1 px on the screen. */
    public static final double PIXELS = 4;

    private final GraphicsContext context;
    private final Function<Colour, Color> worn;

    public ScreenCanvas(GraphicsContext context, Function<Colour, Color> worn) {
        this.context = context;
        this.worn = worn;
        context.setLineCap(StrokeLineCap.BUTT);
        context.setLineJoin(StrokeLineJoin.ROUND);
        context.setTextBaseline(VPos.BASELINE);
    }

    /** Wipes the canvas and draws shapes. */
    public void draw(List<Shape> shapes) {
        context.clearRect(
                0, 0, context.getCanvas().getWidth(), context.getCanvas().getHeight());
        shapes.forEach(shape -> shape.onto(this));
    }

    @Override
    public void polygon(List<Spot> corners, @Nullable Colour fill, @Nullable Pen pen) {
        double[] xs = new double[corners.size()];
        double[] ys = new double[corners.size()];
        for (int i = 0; i < xs.length; i++) {
            xs[i] = corners.get(i).x() * PIXELS;
            ys[i] = corners.get(i).y() * PIXELS;
        }
        if (fill != null) {
            context.setFill(worn.apply(fill));
            context.fillPolygon(xs, ys, xs.length);
        }
        if (pen != null) {
            stroke(pen);
            context.strokePolygon(xs, ys, xs.length);
        }
    }

    @Override
    public void lines(List<List<Spot>> lines, Pen pen) {
        stroke(pen);
        context.beginPath();
        for (List<Spot> line : lines) {
            for (int i = 0; i < line.size(); i++) {
                double x = line.get(i).x() * PIXELS;
                double y = line.get(i).y() * PIXELS;
                if (i == 0) {
                    context.moveTo(x, y);
                } else {
                    context.lineTo(x, y);
                }
            }
        }
        context.stroke();
    }

    @Override
    public void circle(Spot centre, double radius, @Nullable Colour fill, @Nullable Pen pen) {
        double x = (centre.x() - radius) * PIXELS;
        double y = (centre.y() - radius) * PIXELS;
        double size = 2 * radius * PIXELS;
        if (fill != null) {
            context.setFill(worn.apply(fill));
            context.fillOval(x, y, size, size);
        }
        if (pen != null) {
            stroke(pen);
            context.strokeOval(x, y, size, size);
        }
    }

    @Override
    public void label(Label label) {
        context.setFill(worn.apply(label.colour()));
        context.setFont(Fonts.of(label.weight(), label.size() * PIXELS));
        context.setTextAlign(
                switch (label.align()) {
                    case START -> TextAlignment.LEFT;
                    case MIDDLE -> TextAlignment.CENTER;
                    case END -> TextAlignment.RIGHT;
                });
        context.save();
        context.translate(label.at().x() * PIXELS, label.at().y() * PIXELS);
        context.rotate(-label.turn());
        context.fillText(label.text(), 0, 0);
        context.restore();
    }

    @Override
    public void group(String name, Runnable content) {
        content.run();
    }

    private void stroke(Pen pen) {
        context.setStroke(worn.apply(pen.colour()));
        context.setLineWidth(pen.width() * PIXELS);
        context.setLineDashes(pen.type().dashes(pen.width() * PIXELS));
    }
}
