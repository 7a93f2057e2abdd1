package org.shelterwright.layouts.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Route;

/**
 * Lays wires by these routes; others stay as they are.
 *
 * @param routes one for a wire at most
 */
public record SetRoutes(List<Route> routes) implements Edit {
    public SetRoutes {
        routes = List.copyOf(routes);
    }

    @Override
    public String name() {
        return routes.size() == 1 ? "Route " + routes.get(0).wire() : "Route " + routes.size() + " wires";
    }

    @Override
    public Layout apply(Layout layout) {
        Map<String, Route> all = new LinkedHashMap<>(layout.routes());
        routes.forEach(route -> all.put(route.wire(), route));
        return layout.withRoutes(all);
    }
}
