package org.shelterwright.solver.fit.model;

/**
 * A tangent of the margin of one ledger row over the moments of mass: {@code constant + x·Mx + y·My + z·Mz + xy·Mxy}.
 *
 * @param row number of the row
 * @param onStation whether the moments are those on station
 */
public record Plane(int row, boolean onStation, double constant, double x, double y, double z, double xy) {
    /** The margin (thousandths) that the tangent tells for these moments. */
    public double at(double mx, double my, double mz, double mxy) {
        return constant + x * mx + y * my + z * mz + xy * mxy;
    }
}
