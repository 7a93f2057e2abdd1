package org.shelterwright.catalog.space;

/** The axes of a body's frame after ISO 8855: x forward, y to the left, z up. */
public enum Axis {
    X,
    Y,
    Z
}
