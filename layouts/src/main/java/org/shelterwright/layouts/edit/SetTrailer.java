package org.shelterwright.layouts.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.Trailer;
import org.shelterwright.layouts.brief.TrailerLoad;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;

/**
 * Sets the trailer that goes along, with what rides on it, or takes it off. Wires that end at a unit that rides no more go out
 * with it.
 *
 * @param trailer {@code null}: no trailer
 * @param carrier catalog entry of the trailer; {@code null} with no trailer
 * @param items catalog entries of its loads
 */
public record SetTrailer(
        @Nullable Trailer trailer, @Nullable Carrier carrier, List<Item> items) implements Edit {
    public SetTrailer {
        items = List.copyOf(items);
        String asked = trailer == null ? null : trailer.carrier();
        String given = carrier == null ? null : carrier.id();
        if (asked == null ? given != null : !asked.equals(given)) {
            throw new IllegalArgumentException(
                    "The trailer is \"" + asked + "\", but the entry given is \"" + given + "\".");
        }
    }

    /** Takes the trailer off. */
    public static SetTrailer none() {
        return new SetTrailer(null, null, List.of());
    }

    @Override
    public String name() {
        return trailer == null ? "Take the trailer off" : "Put trailer " + trailer.carrier() + " on";
    }

    @Override
    public Layout apply(Layout layout) {
        Map<String, Item> held = new LinkedHashMap<>(layout.parts().items());
        items.forEach(item -> Units.hold(held, item));
        requireLoads(layout.brief(), held);
        Brief asked = layout.brief().withTrailer(trailer);
        Set<String> ends = Units.ofAll(asked).stream().map(UnitSpec::id).collect(Collectors.toSet());
        ends.add("body");
        Brief brief = asked.withWires(asked.wires().stream()
                .filter(wire -> ends.contains(Units.owner(wire.from())) && ends.contains(Units.owner(wire.to())))
                .toList());
        Parts parts = new Parts(
                layout.parts().body(),
                layout.parts().carrier(),
                carrier,
                Units.used(brief, held),
                layout.parts().cables());
        return layout.withAsked(brief, parts);
    }

    private void requireLoads(Brief brief, Map<String, Item> held) {
        for (TrailerLoad load : trailer == null ? List.<TrailerLoad>of() : trailer.loads()) {
            if (!held.containsKey(load.unit().item())) {
                throw new IllegalArgumentException("The unit \"" + load.unit().id() + "\" is of item \""
                        + load.unit().item() + "\", which is not given.");
            }
            if (brief.units().stream()
                    .anyMatch(unit -> unit.id().equals(load.unit().id()))) {
                throw new IllegalArgumentException(
                        "The unit id \"" + load.unit().id() + "\" is given already. Give the new unit another id.");
            }
        }
    }
}
