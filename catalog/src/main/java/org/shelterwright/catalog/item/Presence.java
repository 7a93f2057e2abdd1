package org.shelterwright.catalog.item;

/** In which situations a part of an item is there. */
public enum Presence {
    ALWAYS,
    ON_STATION,
    ON_THE_ROAD;

    public boolean in(Situation situation) {
        return switch (this) {
            case ALWAYS -> true;
            case ON_STATION -> situation == Situation.ON_STATION;
            case ON_THE_ROAD -> situation == Situation.ON_THE_ROAD;
        };
    }
}
