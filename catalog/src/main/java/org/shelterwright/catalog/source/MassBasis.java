package org.shelterwright.catalog.source;

/** How well a mass is known: the source letter of a mass statement. */
public enum MassBasis {
    ESTIMATED('E'),
    CALCULATED('C'),
    SUPPLIER('S'),
    WEIGHED('W');

    private final char letter;

    MassBasis(char letter) {
        this.letter = letter;
    }

    public char letter() {
        return letter;
    }
}
