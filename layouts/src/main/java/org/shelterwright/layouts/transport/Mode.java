package org.shelterwright.layouts.transport;

/** How a leg is travelled. */
public enum Mode {
    ROAD("road"),
    RAIL("rail"),
    SEA("sea"),
    AIR("air");

    private final String word;

    Mode(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
