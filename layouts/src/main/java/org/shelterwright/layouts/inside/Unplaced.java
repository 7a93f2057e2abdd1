package org.shelterwright.layouts.inside;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shelterwright.layouts.brief.PieceSpec;

/**
 * Pieces of a brief that are not where they are asked to be: without a place, or within another unit.
 *
 * @param names how people call them, with where they are and should be
 * @param units the units that hold what belongs into others, each once
 */
public record Unplaced(List<String> names, List<String> units) {
    public Unplaced {
        names = List.copyOf(names);
        units = List.copyOf(units);
    }

    static Unplaced of(List<PieceSpec> toPlace, Map<String, ? extends List<? extends Held>> placed) {
        List<String> names = new ArrayList<>();
        toPlace.forEach(spec -> names.add(spec.name()));
        Set<String> units = new LinkedHashSet<>();
        placed.forEach((unit, pieces) -> pieces.forEach(piece -> {
            String within = piece.spec().within();
            if (within != null && !unit.equals(within)) {
                names.add(piece.name() + " (in " + unit + ", not in " + within + ")");
                units.add(unit);
            }
        }));
        return new Unplaced(names, List.copyOf(units));
    }
}
