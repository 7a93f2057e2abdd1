package org.shelterwright.solver.transport;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Leg;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.scene.Shape;

/** Where pieces are unloaded, and what may not ride with what. */
final class Stops {
    private Stops() {}

    /** Number of the stop of each crate: that of the first leg that ends at its destination, otherwise the last. */
    static Map<String, Integer> of(Journey journey, List<Shape> crates) {
        List<String> places = new ArrayList<>();
        for (Leg leg : journey.legs()) {
            if (!places.contains(leg.to())) {
                places.add(leg.to());
            }
        }
        Map<String, Integer> stops = new LinkedHashMap<>();
        for (Shape crate : crates) {
            String destination =
                    journey.piece(crate.id()).map(Piece::destination).orElse(null);
            int index = destination == null ? -1 : places.indexOf(destination);
            stops.put(crate.id(), index < 0 ? Math.max(1, places.size()) : index + 1);
        }
        return stops;
    }

    /** For each crate those it may not ride with, both ways. */
    static Map<String, Set<String>> apart(Journey journey, List<Shape> crates) {
        Map<String, Set<String>> apart = new LinkedHashMap<>();
        for (Shape crate : crates) {
            for (String other : journey.piece(crate.id()).map(Piece::apart).orElse(List.of())) {
                apart.computeIfAbsent(crate.id(), key -> new LinkedHashSet<>()).add(other);
                apart.computeIfAbsent(other, key -> new LinkedHashSet<>()).add(crate.id());
            }
        }
        return apart;
    }
}
