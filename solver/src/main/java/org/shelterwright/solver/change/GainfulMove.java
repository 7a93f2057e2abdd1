package org.shelterwright.solver.change;

import org.shelterwright.catalog.space.Axis;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Row;

/**
 * A move of one unit that eases a limit and breaks nothing.
 *
 * @param unit id of the unit
 * @param by how far along the axis (µm)
 * @param before the tightest row of the limit before
 * @param after the tightest row of the limit after
 * @param layout with the unit moved, wires and order settled
 */
public record GainfulMove(String unit, String name, Axis axis, int by, Row before, Row after, Layout layout) {
    /** By how much the use of the limit falls. */
    public double gain() {
        return use(before) - use(after);
    }

    static double use(Row row) {
        Double use = row.use();
        return use == null ? 0 : use;
    }

    /** Such as "to the rear". */
    public String way() {
        return switch (axis) {
            case X -> by > 0 ? "forward" : "to the rear";
            case Y -> by > 0 ? "to the left" : "to the right";
            case Z -> by > 0 ? "up" : "down";
        };
    }
}
