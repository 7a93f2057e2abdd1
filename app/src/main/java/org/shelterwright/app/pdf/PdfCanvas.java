package org.shelterwright.app.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.util.Matrix;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Canvas;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Spot;

/** Puts shapes onto a page of a PDF. */
final class PdfCanvas implements Canvas {

    /** Control points of a quarter circle by a cubic curve, in radii. */
    private static final double QUARTER = 0.5523;

    private final PDPageContentStream content;
    private final double height;
    private final Map<Weight, PDFont> fonts;

    /** @param height of the page (mm) */
    PdfCanvas(PDPageContentStream content, double height, Map<Weight, PDFont> fonts) throws IOException {
        this.content = content;
        this.height = height;
        this.fonts = fonts;
        content.setLineJoinStyle(1);
    }

    @Override
    public void polygon(List<Spot> corners, @Nullable Colour fill, @Nullable Pen pen) {
        put(fill, pen, () -> {
            trace(corners);
            content.closePath();
            finish(fill, pen);
        });
    }

    @Override
    public void lines(List<List<Spot>> lines, Pen pen) {
        put(null, pen, () -> {
            for (List<Spot> line : lines) {
                trace(line);
            }
            content.stroke();
        });
    }

    @Override
    public void circle(Spot centre, double radius, @Nullable Colour fill, @Nullable Pen pen) {
        put(fill, pen, () -> {
            float x = x(centre);
            float y = y(centre);
            float r = points(radius);
            float c = points(radius * QUARTER);
            content.moveTo(x + r, y);
            content.curveTo(x + r, y + c, x + c, y + r, x, y + r);
            content.curveTo(x - c, y + r, x - r, y + c, x - r, y);
            content.curveTo(x - r, y - c, x - c, y - r, x, y - r);
            content.curveTo(x + c, y - r, x + r, y - c, x + r, y);
            content.closePath();
            finish(fill, pen);
        });
    }

    @Override
    public void label(Label label) {
        PDFont font = fonts.get(label.weight());
        if (font == null || label.text().isEmpty()) {
            return;
        }
        put(label.colour(), null, () -> {
            double size = label.size() * Pdf.POINTS;
            double width = font.getStringWidth(label.text()) / 1000 * size;
            double back = switch (label.align()) {
                case START -> 0;
                case MIDDLE -> width / 2;
                case END -> width;
            };
            content.beginText();
            content.setFont(font, (float) size);
            content.setTextMatrix(
                    label.turn() == 0
                            ? Matrix.getTranslateInstance((float) (x(label.at()) - back), y(label.at()))
                            : new Matrix(0, 1, -1, 0, x(label.at()), (float) (y(label.at()) - back)));
            content.showText(label.text());
            content.endText();
        });
    }

    @Override
    public void group(String name, Runnable content0) {
        content0.run();
    }

    private void trace(List<Spot> spots) throws IOException {
        for (int i = 0; i < spots.size(); i++) {
            Spot spot = spots.get(i);
            if (i == 0) {
                content.moveTo(x(spot), y(spot));
            } else {
                content.lineTo(x(spot), y(spot));
            }
        }
    }

    private void finish(@Nullable Colour fill, @Nullable Pen pen) throws IOException {
        if (fill != null && pen != null) {
            content.fillAndStroke();
        } else if (fill != null) {
            content.fill();
        } else {
            content.stroke();
        }
    }

    private void put(@Nullable Colour fill, @Nullable Pen pen, Part part) {
        try {
            boolean pale = fill != null && fill.opacity() < 1
                    || pen != null && pen.colour().opacity() < 1;
            if (pale) {
                content.saveGraphicsState();
                PDExtendedGraphicsState state = new PDExtendedGraphicsState();
                state.setNonStrokingAlphaConstant(fill == null ? 1f : (float) fill.opacity());
                state.setStrokingAlphaConstant(
                        pen == null ? 1f : (float) pen.colour().opacity());
                content.setGraphicsStateParameters(state);
            }
            if (fill != null) {
                content.setNonStrokingColor(channel(fill, 16), channel(fill, 8), channel(fill, 0));
            }
            if (pen != null) {
                content.setStrokingColor(channel(pen.colour(), 16), channel(pen.colour(), 8), channel(pen.colour(), 0));
                content.setLineWidth(points(pen.width()));
                content.setLineDashPattern(dashes(pen), 0);
            }
            part.write();
            if (pale) {
                content.restoreGraphicsState();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static float[] dashes(Pen pen) {
        double[] dashes = pen.type().dashes(pen.width());
        float[] points = new float[dashes.length];
        for (int i = 0; i < dashes.length; i++) {
            points[i] = points(dashes[i]);
        }
        return points;
    }

    private float x(Spot spot) {
        return points(spot.x());
    }

    private float y(Spot spot) {
        return points(height - spot.y());
    }

    private static float points(double mm) {
        return (float) (mm * Pdf.POINTS);
    }

    private static float channel(Colour colour, int shift) {
        return (colour.rgb() >> shift & 0xFF) / 255f;
    }

    private interface Part {
        void write() throws IOException;
    }
}
