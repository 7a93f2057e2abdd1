package org.shelterwright.catalog.rack;

/** Which way cooling air goes through a rack or a piece in it. */
public enum Airflow {
    FRONT_TO_REAR,
    REAR_TO_FRONT,
    /** From one side to the other. */
    ACROSS,
    UPWARD,
    /** It moves no air of its own. */
    STILL;

    /** Whether a piece with this flow works in a rack with that one. */
    public boolean goesWith(Airflow rack) {
        return this == STILL || this == rack;
    }
}
