package org.shelterwright.app.desk.space.mark;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.desk.paint.ScreenCanvas;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;

/** What keys do at this moment, in quiet words at the upper left of a view. */
public final class HintLook {
    private static final double SIZE = 12;
    private static final double LEADING = 16;
    private static final double LEFT = 16 / ScreenCanvas.PIXELS;
    private static final double MARGIN = 1.5;

    private HintLook() {}

    /** @param top where it begins (mm of the pane) */
    public static List<Shape> shapes(Glass glass, Typeface typeface, String words, double top) {
        double size = glass.sized(SIZE);
        double leading = glass.sized(LEADING);
        double most = glass.bounds().width() - 2 * LEFT - 2 * MARGIN;
        List<String> lines = new Wrap(typeface, size, Weight.REGULAR).lines(words, most);
        double wide = lines.stream()
                .mapToDouble(line -> typeface.width(line, size, Weight.REGULAR))
                .max()
                .orElse(0);
        Bounds bounds = new Bounds(LEFT, top, LEFT + wide + 2 * MARGIN, top + leading * lines.size() + MARGIN);
        List<Shape> shapes = new ArrayList<>();
        shapes.add(
                new Polygon(TagLook.rounded(bounds, 0.75), Role.PANEL.colour().with(0.9), null));
        double y = top + MARGIN / 2 + leading / 2 + size * Typeface.CAPITAL / 2;
        for (String line : lines) {
            shapes.add(new Label(
                    line, new Spot(LEFT + MARGIN, y), size, Weight.REGULAR, Align.START, 0, Role.TEXT.colour()));
            y += leading;
        }
        return shapes;
    }
}
