package org.shelterwright.app.look;

/** What is drawn on: documents are always light, a window may be dark. */
public enum Ground {
    LIGHT,
    DARK
}
