package org.shelterwright.app.desk.paint;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import javafx.scene.text.Font;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.type.Typeface;

/** Fonts of the typeface for the screen, read once for each weight and size. */
final class Letters {
    private record Key(Weight weight, long tenths) {}

    private final Map<Key, Font> fonts = new HashMap<>();

    /** @param size height of the em (px) */
    Font font(Weight weight, double size) {
        return fonts.computeIfAbsent(new Key(weight, Math.round(size * 10)), key -> read(weight, key.tenths() / 10.0));
    }

    private static Font read(Weight weight, double size) {
        try (InputStream in = Typeface.file(weight)) {
            Font font = Font.loadFont(in, size);
            return font == null ? Font.font(size) : font;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
