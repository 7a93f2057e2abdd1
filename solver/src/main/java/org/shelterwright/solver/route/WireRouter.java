package org.shelterwright.solver.route;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.layouts.cable.Bends;
import org.shelterwright.layouts.cable.Beside;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.cable.RouteShape;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Route;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.scene.Scene;

/**
 * Routes the wires of a layout: all together, or those alone that a change concerns. The ledger of the layout with the routes in
 * it judges them. Equal scenes give equal routes. Safe for several threads.
 */
public final class WireRouter {
    private static final int SPREADS = 3;

    private WireRouter() {}

    /** Routes all wires but those whose routes are pinned. */
    public static RoutePlan route(Scene scene) {
        Map<String, Route> kept = new LinkedHashMap<>();
        scene.layout().routes().forEach((wire, route) -> {
            if (route.pinned()) {
                kept.put(wire, route);
            }
        });
        return new Routing(scene, kept).plan();
    }

    /** Routes the wires that the scene has no route for that holds, and leaves the others as they are. */
    public static RoutePlan complete(Scene scene) {
        return reroute(scene, Set.of());
    }

    /**
     * Routes what a move of units concerns: the wires that end at them, those whose runs they now stand in, those without a
     * route that holds or with a bend that is too tight, all of a bus of which one is concerned, and those that a wire laid again would disturb. The others stay;
     * if there is no room beside them, all are routed.
     *
     * @param moved ids of the units
     */
    public static RoutePlan reroute(Scene scene, Set<String> moved) {
        CableNet net = CableNet.of(scene);
        Map<String, Route> kept = new LinkedHashMap<>();
        Set<String> torn = new HashSet<>();
        for (LaidWire wire : net.wires()) {
            boolean stays = wire.routed()
                    && wire.units().stream().noneMatch(moved::contains)
                    && !Blocked.is(scene, wire, moved)
                    && !tight(wire);
            String bus = wire.wire().bus();
            if (!stays && bus != null) {
                torn.add(bus);
            }
            Route route = scene.layout().routes().get(wire.wire().id());
            if (route != null && (stays || route.pinned())) {
                kept.put(wire.wire().id(), route);
            }
        }
        scene.brief().wires().stream()
                .filter(wire -> wire.bus() != null && torn.contains(wire.bus()))
                .forEach(wire -> kept.computeIfPresent(wire.id(), (id, route) -> route.pinned() ? route : null));
        RoutePlan plan = new Routing(scene, kept).plan();
        for (int more = 0; more < SPREADS && plan.within(); more++) {
            List<String> disturbed = disturbed(scene, plan, kept);
            if (disturbed.isEmpty()) {
                return plan;
            }
            disturbed.forEach(kept::remove);
            plan = new Routing(scene, kept).plan();
        }
        return plan.within() ? plan : route(scene);
    }

    /**
     * Routes one wire through some trays and no others, as by hand: its route is pinned. All other routes stay.
     *
     * @param trays names
     * @throws IllegalArgumentException with a sentence if no way leads through them, or they have no room
     */
    public static RoutePlan through(Scene scene, String wire, Set<String> trays) {
        Map<String, Route> kept = new LinkedHashMap<>(scene.layout().routes());
        kept.remove(wire);
        RoutePlan plan = new Routing(scene, kept, wire, trays).plan();
        Route route = plan.routes().get(wire);
        Set<String> passed = new HashSet<>();
        if (route != null) {
            route.runs().forEach(run -> passed.add(run.tray() == null ? "" : run.tray()));
        }
        String names = String.join(", ", new TreeSet<>(trays));
        if (route == null || !passed.containsAll(trays)) {
            throw new IllegalArgumentException("Wire " + wire + " cannot be led by " + names
                    + ": no way joins its ends through all of them. Choose other trays, or of its class.");
        }
        if (!plan.within()) {
            throw new IllegalArgumentException("Wire " + wire + " finds no room in " + names
                    + ": too many cables lie there. Lead others another way first.");
        }
        Map<String, Route> routes = new LinkedHashMap<>(plan.routes());
        routes.put(wire, route.withPinned(true));
        return new RoutePlan(routes, plan.unrouted(), plan.cost(), plan.bound(), true, plan.rounds());
    }

    /** Whether its route has a corner that its cable has no room for: another way may have opened. */
    private static boolean tight(LaidWire wire) {
        RouteShape shape = wire.shape();
        Cable cable = wire.cable();
        if (shape == null || cable == null) {
            return false;
        }
        Bends.Tightest tightest = shape.tightest();
        Integer radius = cable.bendRadius();
        return tightest != null && radius != null && tightest.radius() < radius;
    }

    /** Wires whose routes were to stay and that one laid again now runs along for too long. */
    private static List<String> disturbed(Scene scene, RoutePlan plan, Map<String, Route> kept) {
        double most = 1000 * scene.rules().valueOr(Figure.CABLE_PARALLEL, Double.MAX_VALUE / 1e6);
        Set<String> again = new HashSet<>(plan.routes().keySet());
        again.removeAll(kept.keySet());
        return CableNet.of(scene).besides(plan.routes().values(), again).stream()
                .filter(beside -> beside.length() > most)
                .map(Beside::other)
                .filter(wire -> {
                    Route route = kept.get(wire);
                    return route != null && !route.pinned();
                })
                .distinct()
                .toList();
    }

    /**
     * A layout with routes for all its wires.
     *
     * @param rules those of its brief
     */
    public static Layout routed(Layout layout, Rules rules) {
        return layout.brief().wires().isEmpty()
                ? layout
                : route(Scene.of(layout, rules)).in(layout);
    }
}
