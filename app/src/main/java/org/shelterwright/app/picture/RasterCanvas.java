package org.shelterwright.app.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Canvas;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.type.Typeface;

/** Puts shapes onto an image. Letters are filled outlines of the typeface, so that no font of the machine plays in. */
final class RasterCanvas implements Canvas, AutoCloseable {

    private final Graphics2D graphics;
    private final Typeface typeface;

    /** @param scale pixels in a millimetre */
    RasterCanvas(BufferedImage image, double scale, Typeface typeface) {
        this.graphics = image.createGraphics();
        this.typeface = typeface;
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.scale(scale, scale);
    }

    @Override
    public void polygon(List<Spot> corners, @Nullable Colour fill, @Nullable Pen pen) {
        Path2D path = path(corners);
        path.closePath();
        paint(path, fill, pen);
    }

    @Override
    public void lines(List<List<Spot>> lines, Pen pen) {
        for (List<Spot> line : lines) {
            paint(path(line), null, pen);
        }
    }

    @Override
    public void circle(Spot centre, double radius, @Nullable Colour fill, @Nullable Pen pen) {
        paint(new Ellipse2D.Double(centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius), fill, pen);
    }

    @Override
    public void label(Label label) {
        double back = switch (label.align()) {
            case START -> 0;
            case MIDDLE -> typeface.width(label) / 2;
            case END -> typeface.width(label);
        };
        AffineTransform before = graphics.getTransform();
        graphics.translate(label.at().x(), label.at().y());
        graphics.rotate(-Math.toRadians(label.turn()));
        graphics.translate(-back, 0);
        graphics.setColor(colour(label.colour()));
        graphics.fill(outline(label));
        graphics.setTransform(before);
    }

    @Override
    public void group(String name, Runnable content) {
        content.run();
    }

    @Override
    public void close() {
        graphics.dispose();
    }

    private Path2D outline(Label label) {
        TrueTypeFont font = typeface.font(label.weight());
        Path2D outline = new Path2D.Double(Path2D.WIND_NON_ZERO);
        try {
            double scale = label.size() / font.getUnitsPerEm();
            double x = 0;
            for (int code : label.text().codePoints().toArray()) {
                int id = font.getUnicodeCmapLookup().getGlyphId(code);
                GlyphData glyph = font.getGlyph().getGlyph(id);
                if (glyph != null) {
                    outline.append(
                            new AffineTransform(scale, 0, 0, -scale, x, 0).createTransformedShape(glyph.getPath()),
                            false);
                }
                x += font.getAdvanceWidth(id) * scale;
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return outline;
    }

    private void paint(java.awt.Shape shape, @Nullable Colour fill, @Nullable Pen pen) {
        if (fill != null) {
            graphics.setColor(colour(fill));
            graphics.fill(shape);
        }
        if (pen != null) {
            graphics.setColor(colour(pen.colour()));
            graphics.setStroke(stroke(pen));
            graphics.draw(shape);
        }
    }

    private static BasicStroke stroke(Pen pen) {
        double[] dashes = pen.type().dashes(pen.width());
        float width = (float) pen.width();
        if (dashes.length == 0) {
            return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
        }
        float[] pattern = new float[dashes.length];
        for (int i = 0; i < dashes.length; i++) {
            pattern[i] = (float) dashes[i];
        }
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, pattern, 0);
    }

    private static Color colour(Colour colour) {
        return new Color(colour.rgb() >> 16 & 0xFF, colour.rgb() >> 8 & 0xFF, colour.rgb() & 0xFF, (int)
                Math.round(colour.opacity() * 255));
    }

    private static Path2D path(List<Spot> spots) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < spots.size(); i++) {
            Spot spot = spots.get(i);
            if (i == 0) {
                path.moveTo(spot.x(), spot.y());
            } else {
                path.lineTo(spot.x(), spot.y());
            }
        }
        return path;
    }
}
