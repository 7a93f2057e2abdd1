package org.shelterwright.app.elevation;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Group;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.look.Role;

/** A short text as a QR code (ISO/IEC 18004, error correction M: 15 of 100 code words may be lost). */
final class ReadableCode {
    /** Light modules that must stay around it on each side (ISO/IEC 18004). */
    static final int QUIET = 4;

    private ReadableCode() {}

    /** The dark modules in a square of a side (mm), without the quiet zone; those side by side in a row are one shape. */
    static Group of(String text, double x, double y, double side) {
        ByteMatrix matrix = matrix(text);
        int count = matrix.getWidth();
        double module = side / count;
        List<Shape> dark = new ArrayList<>();
        for (int row = 0; row < count; row++) {
            for (int from = 0; from < count; from++) {
                int to = from;
                while (to < count && matrix.get(to, row) == 1) {
                    to++;
                }
                if (to > from) {
                    Bounds bounds =
                            new Bounds(x + from * module, y + row * module, x + to * module, y + (row + 1) * module);
                    dark.add(Polygon.of(bounds, Role.TEXT.colour(), null));
                    from = to;
                }
            }
        }
        return new Group("code " + text, dark);
    }

    private static ByteMatrix matrix(String text) {
        try {
            return Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix();
        } catch (WriterException e) {
            throw new IllegalArgumentException("The code \"" + text + "\" cannot be drawn: " + e.getMessage(), e);
        }
    }
}
