package org.shelterwright.catalog.item;

/** Kinds of electric current. */
public enum Current {
    AC,
    DC
}
