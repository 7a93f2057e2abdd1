package org.shelterwright.app.desk.item;

import java.util.Locale;

/** A figure or text that is typed of an item. */
public enum Figure {
    NAME("name", ""),
    DEPTH("depth, along x", "mm"),
    WIDTH("width, along y", "mm"),
    HEIGHT("height, along z", "mm"),
    MASS("mass", "kg"),
    CENTRE("centre of mass", "mm"),
    UNCERTAINTY("mass uncertain by", "kg"),
    GROWTH("expected growth", "%"),
    LOWEST("lowest on a wall", "mm"),
    HIGHEST("highest on a wall", "mm"),
    STACKING("may be stacked on it", "kg"),
    NOTE("note", "");

    private final String words;
    private final String unit;

    Figure(String words, String unit) {
        this.words = words;
        this.unit = unit;
    }

    /** What it is, for people. */
    public String words() {
        return words;
    }

    /** Unit of a number without one; empty if it is a text. */
    public String unit() {
        return unit;
    }

    /** Name of its field. */
    String id() {
        return "item-" + name().toLowerCase(Locale.ROOT);
    }
}
