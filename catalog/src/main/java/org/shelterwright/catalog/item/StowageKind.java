package org.shelterwright.catalog.item;

import org.shelterwright.catalog.space.Face;

/** What kind of place for loose pieces it is. */
public enum StowageKind {
    DRAWER,
    SHELF,
    BIN,
    NET,
    BENCH_BOX,
    CUPBOARD;

    /** Where it is open, as seen on the item, unless its data say otherwise. */
    public Face opening() {
        return this == SHELF || this == CUPBOARD || this == NET
                ? Face.FRONT
                : Face.TOP;
    }
}
