package org.shelterwright.solver.fit.model;

import org.shelterwright.layouts.ledger.Row;

/** How much a ledger row counts in a search: one scale for all units of measure. */
public final class RowAmount {
    private static final double SHARE = 1e6;

    private RowAmount() {}

    /**
     * What is left of a row (thousandths): a millimetre or a kilogram counts 1000; of anything else, a hundredth of its
     * capacity counts as 10 mm. Below zero if the row is broken.
     */
    public static double margin(Row row) {
        Double margin = row.margin();
        Double capacity = row.capacity();
        if (margin == null || capacity == null) {
            return 0;
        }
        boolean plain = row.unit().equals("mm") || row.unit().equals("kg");
        return plain ? margin * 1000 : margin * SHARE / Math.max(1e-6, Math.abs(capacity == 0 ? 1 : capacity));
    }

    /** How far a row is broken, as in {@link #margin}; at least 1 if it is broken at all, else zero. */
    public static long excess(Row row) {
        return row.excess() > 0 ? Math.max(1, Math.round(-margin(row))) : 0;
    }
}
