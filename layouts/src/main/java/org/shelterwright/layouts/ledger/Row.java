package org.shelterwright.layouts.ledger;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;

/**
 * One line of the ledger.
 *
 * @param limit id of the limit, such as "fit.overlap"
 * @param title short name of what is limited here, such as "Rear axle"
 * @param units ids of the units that it concerns; empty if it concerns all
 * @param place where, in the frame of the body; {@code null} if it has no one place
 * @param state load state or situation that governs, such as "on the road, tanks full"; or "does not apply"
 * @param demand what is there ({@code AT_MOST}) or needed ({@code AT_LEAST}), worst case; {@code null} if not assessed
 * @param nominal the same without uncertainty; {@code null} if not apt
 * @param capacity what is allowed ({@code AT_MOST}) or there ({@code AT_LEAST}); {@code null} if not assessed
 * @param use demand / capacity; where there is no capacity (zero or less), what ranks the row: 0 if it holds, else 1 and the
 *     excess; {@code null} if not assessed
 * @param unit unit of demand and capacity
 * @param finding one sentence: what, where, by how much, or which datum is missing
 * @param mend one thing that would mend it; {@code null} if met or unknown
 */
public record Row(
        String limit,
        Subject subject,
        String title,
        List<String> units,
        @Nullable Box place,
        String state,
        Sense sense,
        @Nullable Double demand,
        @Nullable Double nominal,
        @Nullable Double capacity,
        @Nullable Double use,
        String unit,
        Verdict verdict,
        String finding,
        @Nullable String mend,
        Source source) {
    /** On which side of the capacity the demand must lie. */
    public enum Sense {
        AT_MOST,
        AT_LEAST
    }

    public Row {
        units = List.copyOf(units);
        if (verdict != Verdict.NOT_ASSESSED && (demand == null || capacity == null || use == null)) {
            throw new IllegalArgumentException("An assessed row of " + limit + " needs demand, capacity and use.");
        }
    }

    Row with(Verdict other) {
        return new Row(
                limit, subject, title, units, place, state, sense, demand, nominal, capacity, use, unit, other, finding,
                mend, source);
    }

    /** What is left: capacity less demand, below zero if broken; {@code null} if not assessed. */
    public @Nullable Double margin() {
        return demand == null || capacity == null ? null : capacity - demand;
    }

    /** Demand / capacity, to be told; {@code null} if not assessed, or if there is no capacity of which the demand could be a share. */
    public @Nullable Double share() {
        return use == null || capacity == null || capacity <= 0 && use > 0 ? null : use;
    }

    /** Whether there is nothing here that the limit could bind; such a row is met. */
    public boolean doesNotApply() {
        return state.equals(RowDraft.DOES_NOT_APPLY);
    }

    /** Whether the answer is still to come; such a row is not assessed. */
    public boolean awaited() {
        return state.equals(RowDraft.AWAITED);
    }

    /** How far the limit is overstepped, in its unit; zero if it holds or is not assessed. */
    public double excess() {
        Double margin = margin();
        return verdict == Verdict.BROKEN && margin != null ? Math.max(0, -margin) : 0;
    }
}
