package org.shelterwright.catalog.piece;

/** How fast a piece must be at hand. */
public enum Urgency {
    /** Within reach of who needs it. */
    AT_ONCE,
    /** Within a few steps. */
    SOON,
    LATER
}
