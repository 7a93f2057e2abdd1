package org.shelterwright.catalog.piece;

/** How a piece is reached for in use. */
public enum AccessNeed {
    /** It is read or looked at while working. */
    EYE_LEVEL,
    /** It is operated by hand. */
    HAND,
    /** Rarely touched. */
    RARE
}
