package org.shelterwright.catalog.item;

/** The two situations in which a layout must hold. */
public enum Situation {
    /** In use: loose equipment stands where people work with it. */
    ON_STATION,
    /** Moving: loose equipment is stowed and held. */
    ON_THE_ROAD
}
