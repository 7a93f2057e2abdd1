package org.shelterwright.app.desk.space;

/** What keys do while something is held, for people who never read a guide. */
enum Hint {
    SLIDING("Shift: freely \u00B7 X, Y, Z: one axis \u00B7 a figure: the distance, Tab: the next one"
            + " \u00B7 M: onto what is pointed at \u00B7 Esc: back"),
    MOUNTING(
            "goes onto what is pointed at, where it can be mounted \u00B7 M: along its surface again \u00B7 Esc: back"),
    CARRYING("goes onto what is pointed at, where it can be mounted \u00B7 Esc: back");

    private final String words;

    Hint(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
