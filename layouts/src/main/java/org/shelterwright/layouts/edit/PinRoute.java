package org.shelterwright.layouts.edit;

import java.util.LinkedHashMap;
import java.util.Map;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Route;

/**
 * Keeps the route of a wire as it is when wires are routed, or lets it go again.
 *
 * @param wire id of the wire
 */
public record PinRoute(String wire, boolean pinned) implements Edit {
    @Override
    public String name() {
        return (pinned ? "Pin the route of " : "Unpin the route of ") + wire;
    }

    @Override
    public Layout apply(Layout layout) {
        Route route = layout.routes().get(wire);
        if (route == null) {
            throw new IllegalArgumentException("The wire \"" + wire + "\" has no route to pin. Route it first.");
        }
        Map<String, Route> all = new LinkedHashMap<>(layout.routes());
        all.put(wire, route.withPinned(pinned));
        return layout.withRoutes(all);
    }
}
