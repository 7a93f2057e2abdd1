package org.shelterwright.app.sheet;

import org.shelterwright.app.drawing.Bounds;

/**
 * Trimmed sheets; drawings are A3 and A2 lying, reports A4 standing or lying.
 *
 * <p>Source: ISO 5457:1999 (from memory): sizes of table 1; borders of 20 mm on the left for filing and 10 mm else.
 */
public enum SheetSize {
    A4(210, 297),
    A4_LYING(297, 210),
    A3(420, 297),
    A2(594, 420);

    private static final double FILING = 20;
    private static final double BORDER = 10;

    private final double width;
    private final double height;

    SheetSize(double width, double height) {
        this.width = width;
        this.height = height;
    }

    public double width() {
        return width;
    }

    public double height() {
        return height;
    }

    /** The drawing space within the frame. */
    public Bounds space() {
        return new Bounds(FILING, BORDER, width - BORDER, height - BORDER);
    }
}
