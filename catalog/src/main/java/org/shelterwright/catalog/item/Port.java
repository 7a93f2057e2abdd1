package org.shelterwright.catalog.item;

import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

/**
 * Where a cable leaves a unit.
 *
 * @param at in the frame of the item
 * @param connector such as "N" or "8P8C"
 */
public record Port(String name, Point at, Face face, CableClass cableClass, String connector) {}
