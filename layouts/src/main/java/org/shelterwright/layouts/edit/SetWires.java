package org.shelterwright.layouts.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.Route;

/**
 * Sets the wires that the brief asks for. Routes of wires that are gone, or that changed their ends or cable, go out.
 *
 * @param wires all wires
 * @param cables catalog entries that they need and the layout does not hold yet
 */
public record SetWires(List<Wire> wires, List<Cable> cables) implements Edit {
    public SetWires {
        wires = List.copyOf(wires);
        cables = List.copyOf(cables);
    }

    @Override
    public String name() {
        return "Change wires";
    }

    @Override
    public Layout apply(Layout layout) {
        Brief brief = layout.brief().withWires(wires);
        Map<String, Cable> held = new LinkedHashMap<>(layout.parts().cables());
        cables.forEach(cable -> held.putIfAbsent(cable.id(), cable));
        Parts old = layout.parts();
        Parts parts = new Parts(old.body(), old.carrier(), old.trailer(), old.items(), held);
        Map<String, Wire> before = new LinkedHashMap<>();
        layout.brief().wires().forEach(wire -> before.put(wire.id(), wire));
        Layout changed = layout.withAsked(brief, parts);
        Map<String, Route> routes = new LinkedHashMap<>(changed.routes());
        wires.stream()
                .filter(wire -> !wire.equals(before.get(wire.id())))
                .forEach(wire -> routes.remove(wire.id()));
        return changed.withRoutes(routes);
    }
}
