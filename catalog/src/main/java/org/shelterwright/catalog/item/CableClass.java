package org.shelterwright.catalog.item;

/** Classes of cables that are kept apart. */
public enum CableClass {
    POWER,
    SIGNAL,
    RADIO_FREQUENCY,
    FIBRE,
    EARTH
}
