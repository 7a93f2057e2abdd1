package org.shelterwright.catalog.item;

/** What an item is; pictures and drawings give each kind its own detail. */
public enum ItemKind {
    RACK,
    CABINET,
    CUPBOARD,
    LOCKER,
    TABLE,
    DESK,
    BENCH,
    SEAT,
    SHELF,
    CRATE,
    BATTERY_BOX,
    POWER_UNIT,
    GENERATOR,
    HEATER,
    COOLER,
    REFRIGERATOR,
    SINK,
    TANK,
    MAST_BASE,
    WINCH,
    SCREEN,
    LAMP,
    EXTINGUISHER,
    STOWAGE_FRAME,
    INSTRUMENT,
    OTHER
}
