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

/**
 * A brief, the catalog entries that it uses, and where everything is. Units without a placement are still to be placed.
 *
 * @param placements by unit id, in the order of the brief
 * @param boltDown the order of bringing in and bolting down; {@code null} if none was found yet. It may name units that are
 *     not placed, and leave out some that are
 */
public record Layout(
        Brief brief,
        Parts parts,
        Map<String, Placement> placements,
        List<Acceptance> acceptances,
        @Nullable Provenance provenance,
        @Nullable BoltDownOrder boltDown) {
    public Layout {
        Map<String, Placement> ordered = new LinkedHashMap<>();
        for (UnitSpec unit : brief.units()) {
            Placement placement = placements.get(unit.id());
            if (placement != null) {
                ordered.put(unit.id(), placement);
            }
        }
        for (String id : placements.keySet()) {
            if (!ordered.containsKey(id)) {
                throw new IllegalArgumentException("The layout places a unit \"" + id + "\" that its brief lacks.");
            }
        }
        placements = Collections.unmodifiableMap(ordered);
        acceptances = List.copyOf(acceptances);
    }

    /** A layout without an order of bolting down. */
    public Layout(
            Brief brief,
            Parts parts,
            Map<String, Placement> placements,
            List<Acceptance> acceptances,
            @Nullable Provenance provenance) {
        this(brief, parts, placements, acceptances, provenance, null);
    }

    /** A layout in which everything is still to be placed. */
    public static Layout empty(Brief brief, Parts parts) {
        return new Layout(brief, parts, Map.of(), List.of(), null);
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
        return new Layout(brief, parts, changed, acceptances, provenance, boltDown);
    }

    public Layout withProvenance(Provenance changed) {
        return new Layout(brief, parts, placements, acceptances, changed, boltDown);
    }

    public Layout withBoltDown(@Nullable BoltDownOrder changed) {
        return new Layout(brief, parts, placements, acceptances, provenance, changed);
    }

    /** Who has accepted the rows of a limit that concern these units, if anybody has. */
    public Optional<Acceptance> acceptance(String limit, List<String> units) {
        return acceptances.stream().filter(one -> one.covers(limit, units)).findFirst();
    }
}
