package org.shelterwright.app.desk.style;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import javafx.scene.text.Font;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.type.Typeface;

/** The typeface of documents, for the window. */
public final class Fonts {
    private Fonts() {}

    /** Makes the typeface known to the window toolkit; asking twice does no harm. */
    public static void load() {
        for (Weight weight : Weight.values()) {
            try (InputStream file = Typeface.file(weight)) {
                Font.loadFont(file, 13);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    public static Font of(Weight weight, double sizePx) {
        return Font.font(family(weight), sizePx);
    }

    /** The name under which the toolkit knows a weight. */
    public static String family(Weight weight) {
        return switch (weight) {
            case REGULAR -> Typeface.FAMILY;
            case MEDIUM -> Typeface.FAMILY + " Medium";
            case SEMIBOLD -> Typeface.FAMILY + " SemiBold";
        };
    }
}
