package org.shelterwright.solver.fit.model;

/**
 * A tangent of the margin of one ledger row over the moments of mass: {@code constant + x·Mx + y·My + z·Mz + xy·Mxy}.
 *
 * @param row number of the row
 * @param onStation whether the moments are those on station
 */
public record Plane(int row, boolean onStation, double constant, double x, double y, double z, double xy) {}
