package org.shelterwright.catalog.item;

/** What an item looks made of. */
public enum Material {
    STEEL,
    PAINTED_SHEET,
    ALUMINIUM,
    WOOD,
    PLASTIC,
    FABRIC
}
