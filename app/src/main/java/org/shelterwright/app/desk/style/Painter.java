package org.shelterwright.app.desk.style;

import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.TextAlignment;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Canvas;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;

/** Paints shapes of the drawing model in the window; a millimetre of the drawing is one unit of the context. */
public final class Painter implements Canvas {
    private final GraphicsContext context;

    public Painter(GraphicsContext context) {
        this.context = context;
        context.setLineCap(StrokeLineCap.BUTT);
        context.setLineJoin(StrokeLineJoin.ROUND);
        context.setTextBaseline(VPos.BASELINE);
    }

    public void paint(List<Shape> shapes) {
        shapes.forEach(shape -> shape.onto(this));
    }

    @Override
    public void polygon(List<Spot> corners, @Nullable Colour fill, @Nullable Pen pen) {
        double[] x = corners.stream().mapToDouble(Spot::x).toArray();
        double[] y = corners.stream().mapToDouble(Spot::y).toArray();
        if (fill != null) {
            context.setFill(Theme.color(fill));
            context.fillPolygon(x, y, x.length);
        }
        if (pen != null) {
            take(pen);
            context.strokePolygon(x, y, x.length);
        }
    }

    @Override
    public void lines(List<List<Spot>> lines, Pen pen) {
        take(pen);
        for (List<Spot> line : lines) {
            double[] x = line.stream().mapToDouble(Spot::x).toArray();
            double[] y = line.stream().mapToDouble(Spot::y).toArray();
            context.strokePolyline(x, y, x.length);
        }
    }

    @Override
    public void circle(Spot centre, double radius, @Nullable Colour fill, @Nullable Pen pen) {
        double x = centre.x() - radius;
        double y = centre.y() - radius;
        if (fill != null) {
            context.setFill(Theme.color(fill));
            context.fillOval(x, y, 2 * radius, 2 * radius);
        }
        if (pen != null) {
            take(pen);
            context.strokeOval(x, y, 2 * radius, 2 * radius);
        }
    }

    @Override
    public void label(Label label) {
        context.save();
        context.translate(label.at().x(), label.at().y());
        context.rotate(-label.turn());
        context.setFont(Fonts.of(label.weight(), label.size()));
        context.setTextAlign(
                switch (label.align()) {
                    case START -> TextAlignment.LEFT;
                    case MIDDLE -> TextAlignment.CENTER;
                    case END -> TextAlignment.RIGHT;
                });
        context.setFill(Theme.color(label.colour()));
        context.fillText(label.text(), 0, 0);
        context.restore();
    }

    @Override
    public void group(String name, Runnable content) {
        content.run();
    }

    private void take(Pen pen) {
        context.setStroke(Theme.color(pen.colour()));
        context.setLineWidth(pen.width());
        context.setLineDashes(pen.type().dashes(pen.width()));
    }
}
