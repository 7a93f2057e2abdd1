package org.shelterwright.app.drawing;

/**
 * How a line is drawn.
 *
 * @param width on paper (mm)
 */
public record Pen(double width, Colour colour, LineType type) {

    public Pen {
        if (!(width > 0)) {
            throw new IllegalArgumentException("The width of a line must be above zero, but is " + width + " mm.");
        }
    }

    public static Pen of(double width, Colour colour) {
        return new Pen(width, colour, LineType.CONTINUOUS);
    }

    public Pen with(LineType other) {
        return new Pen(width, colour, other);
    }
}
