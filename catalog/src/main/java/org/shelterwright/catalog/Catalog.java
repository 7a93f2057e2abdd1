package org.shelterwright.catalog;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.transit.Transit;

/** Items, bodies, carriers, cables and pieces by their ids, in the order in which they were read, and what legs are planned with. */
public final class Catalog {
    private final Map<String, Item> items;
    private final Map<String, Body> bodies;
    private final Map<String, Carrier> carriers;
    private final Map<String, Cable> cables;
    private final Map<String, Piece> pieces;
    private final Transit transit;

    private Catalog(
            Map<String, Item> items,
            Map<String, Body> bodies,
            Map<String, Carrier> carriers,
            Map<String, Cable> cables,
            Map<String, Piece> pieces,
            Transit transit) {
        this.items = items;
        this.bodies = bodies;
        this.carriers = carriers;
        this.cables = cables;
        this.pieces = pieces;
        this.transit = transit;
    }

    /**
     * Puts a catalog together.
     *
     * @throws IllegalArgumentException if two entries of one kind have the same id
     */
    public static Catalog of(
            Collection<Item> items,
            Collection<Body> bodies,
            Collection<Carrier> carriers,
            Collection<Cable> cables,
            Collection<Piece> pieces,
            Transit transit) {
        return new Catalog(
                index("item", items, Item::id),
                index("body", bodies, Body::id),
                index("carrier", carriers, Carrier::id),
                index("cable", cables, Cable::id),
                index("piece", pieces, Piece::id),
                transit);
    }

    /** A catalog of what a fit-out alone is planned with, without cables and pieces. */
    public static Catalog of(Collection<Item> items, Collection<Body> bodies, Collection<Carrier> carriers) {
        return of(items, bodies, carriers, List.of(), List.of(), Transit.NONE);
    }

    public Optional<Item> item(String id) {
        return Optional.ofNullable(items.get(id));
    }

    public Optional<Body> body(String id) {
        return Optional.ofNullable(bodies.get(id));
    }

    public Optional<Carrier> carrier(String id) {
        return Optional.ofNullable(carriers.get(id));
    }

    public Optional<Cable> cable(String id) {
        return Optional.ofNullable(cables.get(id));
    }

    public Optional<Piece> piece(String id) {
        return Optional.ofNullable(pieces.get(id));
    }

    public Transit transit() {
        return transit;
    }

    public Collection<Item> items() {
        return items.values();
    }

    public Collection<Body> bodies() {
        return bodies.values();
    }

    public Collection<Carrier> carriers() {
        return carriers.values();
    }

    public Collection<Cable> cables() {
        return cables.values();
    }

    public Collection<Piece> pieces() {
        return pieces.values();
    }

    private static <T> Map<String, T> index(String kind, Collection<T> entries, Function<T, String> id) {
        Map<String, T> index = new LinkedHashMap<>();
        for (T entry : entries) {
            if (index.putIfAbsent(id.apply(entry), entry) != null) {
                throw new IllegalArgumentException(
                        "The " + kind + " id \"" + id.apply(entry) + "\" is given twice. Rename one of them.");
            }
        }
        return Collections.unmodifiableMap(index);
    }
}
