package org.shelterwright.app.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What shapes are put onto: a file being written or a picture being painted. Lengths in mm, y down. */
public interface Canvas {

    /** A closed outline, filled, drawn or both. */
    void polygon(List<Spot> corners, @Nullable Colour fill, @Nullable Pen pen);

    /** Open lines that share a pen. */
    void lines(List<List<Spot>> lines, Pen pen);

    void circle(Spot centre, double radius, @Nullable Colour fill, @Nullable Pen pen);

    void label(Label label);

    /** What the content puts onto this canvas, kept together under a name. */
    void group(String name, Runnable content);
}
