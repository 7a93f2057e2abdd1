package org.shelterwright.catalog.transit;

import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.source.Source;

/**
 * Friction between loads and floors.
 *
 * @param dynamicShare the part of it that counts where the load may stir, as with direct lashings
 */
public record FrictionTable(String id, String name, double dynamicShare, List<Friction> pairs, Source source) {
    /** The factor of two materials. */
    public record Friction(Underside load, FloorMaterial floor, double dry, double wet, Source source) {
        public Friction {
            Figures.within("friction factor", dry, 0, 1);
            Figures.within("friction factor, wet", wet, 0, 1);
        }
    }

    public FrictionTable {
        pairs = List.copyOf(pairs);
        Figures.within("dynamic share", dynamicShare, 0, 1);
    }

    public Optional<Friction> of(Underside load, FloorMaterial floor) {
        return pairs.stream()
                .filter(one -> one.load() == load && one.floor() == floor)
                .findFirst();
    }
}
