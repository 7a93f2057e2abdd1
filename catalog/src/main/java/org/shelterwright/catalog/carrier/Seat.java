package org.shelterwright.catalog.carrier;

import org.shelterwright.catalog.space.Point;

/**
 * A seat of a carrier's cab.
 *
 * @param at where the mass of a seated person acts, in the frame of the carrier
 */
public record Seat(String name, Point at, boolean driver) {}
