package org.shelterwright.layouts.layout;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.brief.Wire;

/**
 * A brief, the catalog entries that it uses, and where everything is. Units without a placement are still to be placed.
 *
 * @param placements by unit id, in the order of the brief
 * @param routes how wires are laid, by wire id, in the order of the brief; a wire without one is still to be routed
 * @param boltDown the order of bringing in and bolting down; {@code null} if none was found yet. It may name units that are
 *     not placed, and leave out some that are
 * @param contents what is inside the units
 */
public record Layout(
        Brief brief,
        Parts parts,
        Map<String, Placement> placements,
        Map<String, Route> routes,
        List<Acceptance> acceptances,
        @Nullable Provenance provenance,
        @Nullable BoltDownOrder boltDown,
        Contents contents) {
    public Layout {
        placements =
                ordered(placements, brief.units().stream().map(UnitSpec::id).toList(), "The layout places a unit");
        routes = ordered(routes, brief.wires().stream().map(Wire::id).toList(), "The layout routes a wire");
        acceptances = List.copyOf(acceptances);
        for (String id : contents.places().keySet()) {
            if (brief.listed().piece(id).isEmpty()) {
                throw new IllegalArgumentException("The layout stows a piece \"" + id + "\" that its brief lacks.");
            }
        }
    }

    /** A layout in which everything is still to be placed. */
    public static Layout empty(Brief brief, Parts parts) {
        return new Layout(brief, parts, Map.of(), Map.of(), List.of(), null, null, Contents.NONE);
    }

    private static <T> Map<String, T> ordered(Map<String, T> entries, List<String> asked, String what) {
        Map<String, T> ordered = new LinkedHashMap<>();
        for (String id : asked) {
            T entry = entries.get(id);
            if (entry != null) {
                ordered.put(id, entry);
            }
        }
        for (String id : entries.keySet()) {
            if (!ordered.containsKey(id)) {
                throw new IllegalArgumentException(what + " \"" + id + "\" that its brief lacks.");
            }
        }
        return Collections.unmodifiableMap(ordered);
    }

    public Body body() {
        return parts.body();
    }

    public Optional<Carrier> carrier() {
        return Optional.ofNullable(parts.carrier());
    }

    public Item item(UnitSpec unit) {
        return parts.item(unit.item());
    }

    public Layout with(Placement placement) {
        Map<String, Placement> changed = new LinkedHashMap<>(placements);
        changed.put(placement.unit(), placement);
        return withPlacements(changed);
    }

    public Layout without(String unit) {
        Map<String, Placement> changed = new LinkedHashMap<>(placements);
        changed.remove(unit);
        return withPlacements(changed);
    }

    public Layout withPlacements(Map<String, Placement> changed) {
        return new Layout(brief, parts, changed, routes, acceptances, provenance, boltDown, contents);
    }

    public Layout withRoutes(Map<String, Route> changed) {
        return new Layout(brief, parts, placements, changed, acceptances, provenance, boltDown, contents);
    }

    public Layout withAcceptances(List<Acceptance> changed) {
        return new Layout(brief, parts, placements, routes, changed, provenance, boltDown, contents);
    }

    public Layout withProvenance(@Nullable Provenance changed) {
        return new Layout(brief, parts, placements, routes, acceptances, changed, boltDown, contents);
    }

    public Layout withBoltDown(@Nullable BoltDownOrder changed) {
        return new Layout(brief, parts, placements, routes, acceptances, provenance, changed, contents);
    }

    public Layout withContents(Contents changed) {
        return new Layout(brief, parts, placements, routes, acceptances, provenance, boltDown, changed);
    }

    /**
     * The same for another brief with its own catalog entries. The brief must have every unit that is placed; what it no longer
     * asks for otherwise goes.
     */
    public Layout withAsked(Brief asked, Parts entries) {
        Map<String, Route> kept = new LinkedHashMap<>(routes);
        kept.keySet().retainAll(asked.wires().stream().map(Wire::id).toList());
        return new Layout(
                asked,
                entries,
                placements,
                kept,
                acceptances,
                provenance,
                boltDown == null ? null : boltDown.keptFor(asked),
                contents.keptFor(asked));
    }

    /** Who has accepted the rows of a limit that concern these units, if anybody has. */
    public Optional<Acceptance> acceptance(String limit, List<String> units) {
        return acceptances.stream().filter(one -> one.covers(limit, units)).findFirst();
    }
}
