package org.shelterwright.solver.inside.rack;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * A piece to arrange, as the search sees it.
 *
 * @param kind pieces of the same kind can take each other's place
 * @param units height units that it takes
 * @param grams its mass with growth and uncertainty
 * @param costs by bay, then by its lowest unit less one: what its limits are overstepped by and how high its mass lies;
 *     {@code null} for a bay that it must not go into
 */
@SuppressWarnings("ArrayRecordComponent") // Inside the search; compared by asksAsMuch only.
record RackPiece(String id, int kind, int units, long grams, long @Nullable [][] costs) {
    /** Whether another piece asks the same of its place, whatever it is called. */
    boolean asksAsMuch(RackPiece other) {
        return kind == other.kind
                && units == other.units
                && grams == other.grams
                && Arrays.deepEquals(costs, other.costs);
    }
}
