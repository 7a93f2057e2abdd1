package org.shelterwright.app.type;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Spot;

/**
 * IBM Plex Sans in three weights (SIL Open Font License 1.1, kept beside the font files). Its figures are of equal
 * width, so columns align. Not for several threads at once: a font file is opened when its weight is first asked for,
 * and read as glyphs are.
 */
public final class Typeface {

    /** Name of the family, for files that name a font instead of carrying it. */
    public static final String FAMILY = "IBM Plex Sans";

    /** Height of capitals and figures, in em. */
    public static final double CAPITAL = 0.698;

    private static final double ASCENT = 0.78;
    private static final double DESCENT = 0.22;

    private final Map<Weight, TrueTypeFont> fonts = new EnumMap<>(Weight.class);

    /** Opens the font file of a weight. */
    public static InputStream file(Weight weight) {
        String name = switch (weight) {
            case REGULAR -> "IBMPlexSans_400Regular.ttf";
            case MEDIUM -> "IBMPlexSans_500Medium.ttf";
            case SEMIBOLD -> "IBMPlexSans_600SemiBold.ttf";
        };
        InputStream in = Typeface.class.getResourceAsStream(name);
        if (in == null) {
            throw new IllegalStateException("The font " + name + " is missing from the program: build it again.");
        }
        return in;
    }

    /** Size of the em (mm) at which capitals and figures are of the given height (mm), as ISO 3098 gives it. */
    public static double sizeOf(double capitalHeight) {
        return capitalHeight / CAPITAL;
    }

    public TrueTypeFont font(Weight weight) {
        return fonts.computeIfAbsent(weight, Typeface::read);
    }

    /** Width of a line of text (mm) at an em of the given size (mm). */
    public double width(String text, double size, Weight weight) {
        TrueTypeFont font = font(weight);
        try {
            var glyphs = font.getUnicodeCmapLookup();
            double units = 0;
            for (int code : text.codePoints().toArray()) {
                units += font.getAdvanceWidth(glyphs.getGlyphId(code));
            }
            return units / font.getUnitsPerEm() * size;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public double width(Label label) {
        return width(label.text(), label.size(), label.weight());
    }

    /** The rectangle that a text takes on paper, from its descenders to its ascenders. */
    public Bounds bounds(Label label) {
        double width = width(label);
        double from = switch (label.align()) {
            case START -> 0;
            case MIDDLE -> -width / 2;
            case END -> -width;
        };
        double up = ASCENT * label.size();
        double down = DESCENT * label.size();
        Spot at = label.at();
        return label.turn() == 0
                ? new Bounds(at.x() + from, at.y() - up, at.x() + from + width, at.y() + down)
                : new Bounds(at.x() - up, at.y() - from - width, at.x() + down, at.y() - from);
    }

    private static TrueTypeFont read(Weight weight) {
        try (InputStream in = file(weight)) {
            return new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
