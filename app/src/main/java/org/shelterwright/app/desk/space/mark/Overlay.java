package org.shelterwright.app.desk.space.mark;

/** What can be laid over the space, each with its chip. */
public enum Overlay {
    CLEAR_ZONES("Clear zones"),
    SWINGS("Swings"),
    CENTRE_OF_MASS("Centre of mass"),
    FLOOR_LOAD("Floor load"),
    WALKWAYS("Walkways");

    private final String words;

    Overlay(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
