package org.shelterwright.layouts.transport;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.layout.Provenance;

/**
 * A journey.
 *
 * @param pieces what goes
 * @param loads cars with what is on them
 * @param legs in their order
 * @param limits values that differ from those of the rule sets, by the id of their figure
 * @param provenance how positions and lashings were found; {@code null} if by hand
 */
public record Journey(
        String id,
        String name,
        List<Piece> pieces,
        List<Load> loads,
        List<Leg> legs,
        Map<String, Double> limits,
        @Nullable Provenance provenance,
        @Nullable String note) {
    public Journey {
        pieces = List.copyOf(pieces);
        loads = List.copyOf(loads);
        legs = List.copyOf(legs);
        limits = Collections.unmodifiableMap(new TreeMap<>(limits));
        Set<String> seen = new HashSet<>();
        pieces.forEach(piece -> once("piece or load", piece.id(), seen));
        loads.forEach(load -> once("piece or load", load.id(), seen));
        Set<String> legIds = new HashSet<>();
        legs.forEach(leg -> once("leg", leg.id(), legIds));
    }

    public Optional<Piece> piece(String wanted) {
        return pieces.stream().filter(one -> one.id().equals(wanted)).findFirst();
    }

    public Optional<Load> load(String wanted) {
        return loads.stream().filter(one -> one.id().equals(wanted)).findFirst();
    }

    public Optional<Leg> leg(String wanted) {
        return legs.stream().filter(one -> one.id().equals(wanted)).findFirst();
    }

    /**
     * A leg that there must be.
     *
     * @throws IllegalArgumentException if there is none of that id
     */
    public Leg legOrThrow(String wanted) {
        return leg(wanted)
                .orElseThrow(() -> new IllegalArgumentException("There is no leg \"" + wanted + "\" in this journey."));
    }

    /** The same with another leg in the place of the one with its id. */
    public Journey with(Leg other) {
        return withLegs(legs.stream()
                .map(one -> one.id().equals(other.id()) ? other : one)
                .toList());
    }

    /** The same with another load in the place of the one with its id. */
    public Journey with(Load other) {
        return withLoads(loads.stream()
                .map(one -> one.id().equals(other.id()) ? other : one)
                .toList());
    }

    public Journey withLoads(List<Load> others) {
        return new Journey(id, name, pieces, others, legs, limits, provenance, note);
    }

    public Journey withLegs(List<Leg> others) {
        return new Journey(id, name, pieces, loads, others, limits, provenance, note);
    }

    public Journey withProvenance(@Nullable Provenance other) {
        return new Journey(id, name, pieces, loads, legs, limits, other, note);
    }

    /** What a piece or load is called. */
    public String nameOf(String wanted) {
        return piece(wanted)
                .map(Piece::name)
                .or(() -> load(wanted).map(Load::name))
                .orElse(wanted);
    }

    private static void once(String kind, String id, Set<String> seen) {
        if (!seen.add(id)) {
            throw new IllegalArgumentException(
                    "The id \"" + id + "\" of a " + kind + " is given twice. Rename one of them.");
        }
    }
}
