package org.shelterwright.app.picture;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.view.PictureSheet;

/** Writes pictures and drawings as PNG. The same input gives the same bytes. */
public final class Png {

    /** Width of every picture (pixels). */
    public static final int WIDTH = 2000;

    private final Typeface typeface;

    public Png(Typeface typeface) {
        this.typeface = typeface;
    }

    /** A picture in space, painted with a depth buffer. */
    public byte[] write(PictureSheet sheet) {
        double scale = WIDTH / sheet.width();
        int height = (int) Math.round(sheet.height() * scale);
        BufferedImage image =
                new DepthPainter(sheet.projection(), scale, WIDTH, height, Role.VIEW.colour()).paint(sheet.model());
        try (RasterCanvas canvas = new RasterCanvas(image, scale, typeface)) {
            sheet.over().forEach(shape -> shape.onto(canvas));
        }
        return bytes(image);
    }

    /** A flat drawing on white. */
    public byte[] write(Drawing drawing) {
        double scale = WIDTH / drawing.width();
        int height = (int) Math.round(drawing.height() * scale);
        BufferedImage image = new BufferedImage(WIDTH, height, BufferedImage.TYPE_INT_RGB);
        java.util.Arrays.fill(
                ((java.awt.image.DataBufferInt) image.getRaster().getDataBuffer()).getData(),
                Role.RAISED.colour().rgb());
        try (RasterCanvas canvas = new RasterCanvas(image, scale, typeface)) {
            drawing.onto(canvas);
        }
        return bytes(image);
    }

    private static byte[] bytes(BufferedImage image) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
