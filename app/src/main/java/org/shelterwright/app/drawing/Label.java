package org.shelterwright.app.drawing;

/**
 * A line of text.
 *
 * @param at its anchor on the base line
 * @param size height of the em (mm)
 * @param turn against the x axis (degrees, positive anticlockwise): 0, or 90 to read from the right edge of the sheet
 */
public record Label(String text, Spot at, double size, Weight weight, Align align, int turn, Colour colour)
        implements Shape {

    /** How heavy the strokes are. */
    public enum Weight {
        REGULAR,
        MEDIUM,
        SEMIBOLD
    }

    /** Which part of the text lies at its anchor. */
    public enum Align {
        START,
        MIDDLE,
        END
    }

    public Label {
        if (turn != 0 && turn != 90) {
            throw new IllegalArgumentException("A text stands at 0° or 90°, not " + turn + "°.");
        }
    }

    public Label with(Align other) {
        return new Label(text, at, size, weight, other, turn, colour);
    }

    public Label with(Weight other) {
        return new Label(text, at, size, other, align, turn, colour);
    }

    public Label at(Spot other) {
        return new Label(text, other, size, weight, align, turn, colour);
    }

    @Override
    public void onto(Canvas canvas) {
        canvas.label(this);
    }

    @Override
    public Label moved(double dx, double dy) {
        return at(at.plus(dx, dy));
    }
}
