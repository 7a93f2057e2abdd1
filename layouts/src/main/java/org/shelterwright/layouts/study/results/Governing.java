package org.shelterwright.layouts.study.results;

import java.util.List;
import java.util.Optional;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;

/**
 * The limit that governs a layout: the first broken row of its ledger, or else the assessed row with the greatest use.
 *
 * @param limit id of the limit
 * @param title what is limited
 * @param units ids of the units concerned
 * @param state load state or situation
 * @param demand in the unit
 * @param capacity in the unit
 * @param margin what is left, below zero if broken, in the unit
 * @param use demand over capacity
 * @param unit unit of demand, capacity and margin
 */
public record Governing(
        String limit,
        String title,
        List<String> units,
        String state,
        double demand,
        double capacity,
        double margin,
        double use,
        String unit) {
    public Governing {
        units = List.copyOf(units);
    }

    static Optional<Governing> of(Ledger ledger) {
        return ledger.rows().stream()
                .filter(row -> row.verdict() != Verdict.NOT_ASSESSED && !row.doesNotApply())
                .findFirst()
                .flatMap(Governing::of);
    }

    private static Optional<Governing> of(Row row) {
        Double demand = row.demand();
        Double capacity = row.capacity();
        Double use = row.use();
        if (demand == null || capacity == null || use == null) {
            return Optional.empty();
        }
        return Optional.of(new Governing(
                row.limit(),
                row.title(),
                row.units(),
                row.state(),
                finite(demand),
                finite(capacity),
                finite(capacity - demand),
                finite(use),
                row.unit()));
    }

    /** Files hold no infinities; a use without bound is the greatest number there. */
    private static double finite(double value) {
        return Double.isNaN(value) ? 0 : Math.max(-1e12, Math.min(1e12, value));
    }
}
