package org.shelterwright.app.desk.space.solid;

/** How a unit is shown. */
public enum Dress {
    PLAIN,
    /** Edges in the colour of the selection. */
    CHOSEN,
    /** Thin edges without faces, so that what is behind is seen. */
    X_RAY,
    HIDDEN
}
