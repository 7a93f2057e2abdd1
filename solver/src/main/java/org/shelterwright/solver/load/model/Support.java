package org.shelterwright.solver.load.model;

/** What a piece must stand on. */
public enum Support {
    /** The whole base of each piece rests on the floor or on other pieces. */
    FULL,
    /** Pieces may hang in the air: the variant of the literature that leaves support to dunnage. */
    NONE
}
