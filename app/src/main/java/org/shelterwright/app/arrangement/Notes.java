package org.shelterwright.app.arrangement;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;

/** Numbered notes on a drawing. */
final class Notes {

    private static final double CAPITALS = 2.5;
    private static final double LINE = 5;
    private static final double INDENT = 6;

    private final List<List<String>> notes = new ArrayList<>();

    Notes(Typeface typeface, List<String> sentences, double width) {
        Wrap wrap = new Wrap(typeface, Typeface.sizeOf(CAPITALS), Weight.REGULAR);
        sentences.forEach(sentence -> notes.add(wrap.lines(sentence, width - INDENT)));
    }

    double height() {
        return LINE * (1.4 + notes.stream().mapToInt(List::size).sum());
    }

    /** The notes with their upper left corner at a place. */
    List<Shape> shapes(Spot corner) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Lettering.bold("Notes", corner.plus(0, 3), CAPITALS));
        double y = corner.y() + LINE * 1.4 + 3;
        for (int i = 0; i < notes.size(); i++) {
            shapes.add(Lettering.of(Integer.toString(i + 1), new Spot(corner.x(), y), CAPITALS));
            for (String line : notes.get(i)) {
                shapes.add(Lettering.of(line, new Spot(corner.x() + INDENT, y), CAPITALS));
                y += LINE;
            }
        }
        return shapes;
    }
}
