package org.shelterwright.solver.route;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Route;

/**
 * Routes of the wires of a layout.
 *
 * @param routes by wire, in the order of the brief
 * @param unrouted wires for which there is none, with the reason
 * @param cost laying cost of those that were searched for, in metres of tray
 * @param bound no routes for them over the same runs cost less (m)
 * @param within whether no tray and no panel holds more than it may
 * @param rounds rounds of negotiation that it took
 */
public record RoutePlan(
        Map<String, Route> routes, List<Unrouted> unrouted, double cost, double bound, boolean within, int rounds) {
    public RoutePlan {
        routes = Collections.unmodifiableMap(new LinkedHashMap<>(routes));
        unrouted = List.copyOf(unrouted);
    }

    /**
     * A wire without a route.
     *
     * @param reason one sentence
     */
    public record Unrouted(String wire, String reason) {}

    /** How far the cost may be above the least, as a share of the bound. */
    public double gap() {
        return bound <= 0 ? 0 : Math.max(0, (cost - bound) / bound);
    }

    /** A layout with these routes. */
    public Layout in(Layout layout) {
        return layout.withRoutes(routes);
    }
}
