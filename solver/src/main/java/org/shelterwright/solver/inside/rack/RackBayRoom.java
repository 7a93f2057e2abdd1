package org.shelterwright.solver.inside.rack;

import java.util.Arrays;

/**
 * A bay to fill, as the search sees it.
 *
 * @param units its height units
 * @param blocked by unit less one: taken by a piece that stays
 * @param roomGrams mass that it may still take (g)
 * @param openCost what an open unit costs
 */
@SuppressWarnings("ArrayRecordComponent") // Inside the search; compared by offersAsMuch only.
record RackBayRoom(String unit, String bay, int units, boolean[] blocked, long roomGrams, long openCost) {
    /** Whether another bay offers the same, wherever it is. */
    boolean offersAsMuch(RackBayRoom other) {
        return units == other.units
                && roomGrams == other.roomGrams
                && openCost == other.openCost
                && Arrays.equals(blocked, other.blocked);
    }

    /** What it costs to overload the bay with so many grams. */
    long overload(long grams) {
        return grams <= roomGrams ? 0 : RackCost.HARD * (1 + (grams - roomGrams) / 1000);
    }
}
