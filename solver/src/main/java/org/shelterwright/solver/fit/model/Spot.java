package org.shelterwright.solver.fit.model;

/**
 * Where a slot is.
 *
 * @param option number of its option
 * @param x low corner in the frame of the body (µm)
 * @param y as x
 * @param z as x
 */
public record Spot(int option, int x, int y, int z) {}
