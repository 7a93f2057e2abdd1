package org.shelterwright.app.workpack;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;
import org.shelterwright.app.view.StepPicture;

/**
 * How close a card is set; all in mm.
 *
 * @param text height of capitals
 * @param line from line to line
 * @param gap between the parts
 * @param pattern height of the sketch of the holes
 * @param least height of the picture below which its numbers crowd
 */
record Setting(double text, double line, double gap, double pattern, double least) {
    static final Setting LOOSE = new Setting(2, 4.3, 4, 20, StepPicture.HEIGHT - 20);

    /** 1.8 mm is the least height of lettering after ISO 3098. */
    static final Setting TIGHT = new Setting(1.8, 3.7, 2.5, 15, 40);

    /** Sets a paragraph; gives where it ends. */
    double paragraph(
            List<Shape> shapes, Typeface typeface, String words, double x, double top, double width, Weight weight) {
        List<Shape> lines = new ArrayList<>();
        double y = top;
        for (String one : new Wrap(typeface, Typeface.sizeOf(text), weight).lines(words, width)) {
            lines.add(Lettering.of(one, new Spot(x, y + 0.75 * line), text).with(weight));
            y += line;
        }
        shapes.addAll(lines);
        return y;
    }
}
