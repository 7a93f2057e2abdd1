package org.shelterwright.catalog.item;

/** Why a clear zone must stay free of solids. */
public enum Purpose {
    /** A person stands there to operate or service the unit. */
    SERVICE,
    /** A door, lid, drawer or slide-out moves through it. */
    SWING,
    /** A seated person and the way their seat moves. */
    SEAT,
    /** Air in or out. */
    AIR,
    /** Part of a way out. */
    EXIT;

    /** Whether a person must be able to walk to it. */
    public boolean reached() {
        return this == SERVICE || this == SEAT;
    }
}
