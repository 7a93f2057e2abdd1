package org.shelterwright.layouts.brief;

/**
 * Two units that must not share a supply, such as one on the mains and its twin on the battery.
 *
 * @param a id of a unit
 * @param b id of another
 * @param reason why, for people
 */
public record SupplyPair(String a, String b, String reason) {
    public SupplyPair {
        if (a.equals(b)) {
            throw new IllegalArgumentException(
                    "The unit \"" + a + "\" cannot be kept off its own supply. Name two units.");
        }
    }

    boolean names(String unit) {
        return a.equals(unit) || b.equals(unit);
    }
}
