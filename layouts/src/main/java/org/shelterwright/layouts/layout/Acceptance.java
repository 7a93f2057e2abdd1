package org.shelterwright.layouts.layout;

import java.util.List;
import java.util.stream.Stream;

/**
 * A broken or unassessed limit that a person has accepted. The ledger still shows it as it is, with this beside it.
 *
 * @param limit id of the limit
 * @param units ids of the units that the row concerns
 * @param date ISO 8601 date
 */
public record Acceptance(String limit, List<String> units, String reason, String by, String date) {
    public Acceptance {
        units = List.copyOf(units);
        if (reason.isBlank() || by.isBlank()) {
            throw new IllegalArgumentException("An accepted limit needs a reason and a name.");
        }
    }

    /** Whether a row of this limit that concerns these units is the one that was accepted. */
    public boolean covers(String otherLimit, List<String> otherUnits) {
        return limit.equals(otherLimit) && units.equals(otherUnits);
    }

    /** Those that do not cover a row. */
    public static List<Acceptance> without(List<Acceptance> all, String limit, List<String> units) {
        return all.stream().filter(one -> !one.covers(limit, units)).toList();
    }

    /** These with this one, which takes the place of an earlier one of the same row. */
    public List<Acceptance> addedTo(List<Acceptance> all) {
        return Stream.concat(without(all, limit, units).stream(), Stream.of(this))
                .toList();
    }

    /** Who accepted it, when and why. */
    public String sentence() {
        return "Accepted by " + by + " on " + date + ": " + reason;
    }
}
