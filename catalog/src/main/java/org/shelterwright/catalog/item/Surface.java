package org.shelterwright.catalog.item;

/** What a unit is mounted on. */
public enum Surface {
    FLOOR,
    /** The back (rear face) of the item lies on a wall. */
    WALL,
    /** The top of the item lies under the roof. */
    ROOF,
    /** The bottom lies on a support of another unit. */
    ON_UNIT,
    /** The top hangs under a support of another unit. */
    UNDER_UNIT
}
