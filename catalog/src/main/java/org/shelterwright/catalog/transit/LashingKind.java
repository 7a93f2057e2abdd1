package org.shelterwright.catalog.transit;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Millimetres;

/**
 * What things are lashed with: a chain, strap or wire with its tensioner.
 *
 * @param capacityN greatest force in use when pulled straight, LC (N)
 * @param tensionN force that the tensioner leaves in it, S_TF (N); {@code null} if it is not for tying down
 * @param shortest shortest length between its hooks (µm)
 * @param longest longest length between its hooks (µm)
 */
public record LashingKind(
        String id,
        String name,
        Make make,
        Tensioner tensioner,
        double capacityN,
        @Nullable Double tensionN,
        @Millimetres int shortest,
        @Millimetres int longest,
        Source source,
        @Nullable String note) {
    /** What it is made of. */
    public enum Make {
        CHAIN,
        STRAP,
        WIRE
    }

    /** What it is tightened with. */
    public enum Tensioner {
        TURNBUCKLE,
        RATCHET,
        LOAD_BINDER
    }

    public LashingKind {
        Figures.positive("capacity of lashing " + id + " (N)", capacityN);
        if (shortest < 0 || longest <= shortest) {
            throw new IllegalArgumentException("The lashing " + id + " must be longer than its shortest length.");
        }
    }
}
