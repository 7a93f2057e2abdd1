package org.shelterwright.layouts.insight;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.ledger.Row;

/**
 * How much one unit may grow, one way at a time, before a limit breaks that held.
 *
 * @param unit id of the unit
 * @param ways heavier (unless its mass is not known), deeper, wider and taller
 */
public record UnitGrowth(String unit, String name, List<Way> ways) {
    public UnitGrowth {
        ways = List.copyOf(ways);
    }

    /** A way to grow. */
    public enum Kind {
        HEAVIER("heavier", "kg"),
        DEEPER("deeper", "mm"),
        WIDER("wider", "mm"),
        TALLER("taller", "mm");

        private final String word;
        private final String unit;

        Kind(String word, String unit) {
            this.word = word;
            this.unit = unit;
        }

        public String word() {
            return word;
        }

        public String unit() {
            return unit;
        }
    }

    /**
     * How far it may grow one way.
     *
     * @param most whole kg or mm
     * @param breaks what one more would break; {@code null} if the search ended at its bound
     */
    public record Way(Kind kind, int most, @Nullable Row breaks) {}

    /** Empty if nothing can be said, since the mass of the unit is not known. */
    public Optional<Way> way(Kind kind) {
        return ways.stream().filter(one -> one.kind() == kind).findFirst();
    }
}
