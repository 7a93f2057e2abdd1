package org.shelterwright.layouts.layout;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.json.NearestName;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.brief.UnitSpec;

/**
 * What is inside the units: the catalog entries of the pieces, and where each piece rides. Pieces of the brief without a place
 * are still to be stowed.
 *
 * @param kinds by id
 * @param places by id of the piece
 */
public record Contents(Map<String, Piece> kinds, Map<String, PiecePlace> places) {
    public static final Contents NONE = new Contents(Map.of(), Map.of());

    public Contents {
        kinds = Collections.unmodifiableMap(new LinkedHashMap<>(kinds));
        places = Collections.unmodifiableMap(new LinkedHashMap<>(places));
    }

    /**
     * The kinds of the pieces of a brief, nothing stowed yet.
     *
     * @throws IllegalArgumentException naming the piece and the kind, if an entry is missing
     */
    public static Contents of(Brief brief, Catalog catalog) {
        Map<String, Piece> kinds = new LinkedHashMap<>();
        for (PieceSpec spec : brief.listed().pieces()) {
            kinds.put(
                    spec.kind(),
                    catalog.piece(spec.kind())
                            .orElseThrow(() -> new IllegalArgumentException("The kind \"" + spec.kind() + "\" of piece \""
                                    + spec.id() + "\" is not in the catalog."
                                    + NearestName.hint(
                                            spec.kind(),
                                            catalog.pieces().stream()
                                                    .map(Piece::id)
                                                    .toList()))));
        }
        return kinds.isEmpty() ? NONE : new Contents(kinds, Map.of());
    }

    /**
     * Finds the entry of a piece.
     *
     * @throws IllegalArgumentException if it is not held
     */
    public Piece kind(PieceSpec spec) {
        Piece piece = kinds.get(spec.kind());
        if (piece == null) {
            throw new IllegalArgumentException("The layout holds no kind of piece \"" + spec.kind() + "\".");
        }
        return piece;
    }

    public Contents with(PiecePlace place) {
        Map<String, PiecePlace> changed = new LinkedHashMap<>(places);
        changed.put(place.piece(), place);
        return withPlaces(changed);
    }

    public Contents without(String piece) {
        Map<String, PiecePlace> changed = new LinkedHashMap<>(places);
        changed.remove(piece);
        return withPlaces(changed);
    }

    public Contents withPlaces(Map<String, PiecePlace> changed) {
        return new Contents(kinds, changed);
    }

    /** Those that a brief still lists, in units that it still has. */
    public Contents keptFor(Brief brief) {
        if (this == NONE || kinds.isEmpty()) {
            return NONE;
        }
        Set<String> units = brief.units().stream().map(UnitSpec::id).collect(Collectors.toSet());
        Map<String, PiecePlace> left = new LinkedHashMap<>();
        Map<String, Piece> used = new LinkedHashMap<>();
        for (PieceSpec spec : brief.listed().pieces()) {
            PiecePlace place = places.get(spec.id());
            Piece kind = kinds.get(spec.kind());
            if (place != null && units.contains(place.unit())) {
                left.put(spec.id(), place);
            }
            if (kind != null) {
                used.put(spec.kind(), kind);
            }
        }
        return left.equals(places) && used.equals(kinds) ? this : new Contents(used, left);
    }
}
