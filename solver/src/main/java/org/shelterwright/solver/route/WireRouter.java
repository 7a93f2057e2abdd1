package org.shelterwright.solver.route;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Route;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.scene.Scene;

/**
 * Routes the wires of a layout: all together, or those alone that a change concerns. The ledger of the layout with the routes in
 * it judges them. Equal scenes give equal routes. Safe for several threads.
 */
public final class WireRouter {
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
     * route that holds, and all of a bus of which one is concerned. The others stay; if there is no room beside them, all are routed.
     *
     * @param moved ids of the units
     */
    public static RoutePlan reroute(Scene scene, Set<String> moved) {
        Map<String, Route> kept = new LinkedHashMap<>();
        Set<String> torn = new HashSet<>();
        for (LaidWire wire : CableNet.of(scene).wires()) {
            boolean stays = wire.routed()
                    && wire.units().stream().noneMatch(moved::contains)
                    && !Blocked.is(scene, wire, moved);
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
        return plan.within() ? plan : route(scene);
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
