package org.shelterwright.app.drawing;

/** A part of a drawing. */
public sealed interface Shape permits Polygon, Lines, Circle, Hatch, Label, Group {

    void onto(Canvas canvas);

    /** The same shape, shifted on paper (mm). */
    Shape moved(double dx, double dy);
}
