package org.shelterwright.app.desk.wires;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.work.Work;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.edit.PinRoute;
import org.shelterwright.layouts.edit.SetRoutes;
import org.shelterwright.layouts.edit.SetWires;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Route;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.route.RoutePlan;
import org.shelterwright.solver.route.WireRouter;

/** What can be done with wires, each as one step. Routing is done away from the window's thread. For the window's thread. */
final class WireDesk {
    private final Session session;
    private final Work work;
    private final Consumer<String> tell;

    /** @param tell takes a sentence about what was done or what is in the way; empty if there is nothing to say */
    WireDesk(Session session, Work work, Consumer<String> tell) {
        this.session = session;
        this.work = work;
        this.tell = tell;
    }

    /** Routes the wires that have no route that holds. */
    void routeMissing() {
        route("Routing what has no route", WireRouter::complete);
    }

    /** Routes all wires whose routes are not pinned. */
    void routeAll() {
        route("Routing all wires", WireRouter::route);
    }

    /** Routes one wire through some trays and no others, and pins it. */
    void through(String wire, List<String> trays) {
        route("Routing " + wire, scene -> WireRouter.through(scene, wire, Set.copyOf(trays)));
    }

    /** Why nothing can be routed now; empty if it can. */
    Optional<String> obstacle() {
        if (session.now().layout().brief().wires().isEmpty()) {
            return Optional.of("The brief asks for no wires. Add one first.");
        }
        return session.now().tryingOut()
                ? Optional.of("A change is being tried out. Keep it or give it up first.")
                : Optional.empty();
    }

    /** Pins the routes of wires, or lets them go if all are pinned. */
    void pin(Set<String> wires) {
        boolean all = wires.stream().allMatch(this::pinned);
        Layout layout = session.now().layout();
        for (String wire : wires) {
            layout = new PinRoute(wire, !all).apply(layout);
        }
        session.apply((all ? "Unpin " : "Pin ") + named(wires, "the route of ", "the routes of "), layout);
    }

    void add(SetWires step, String id) {
        session.apply("Add wire " + id, step.apply(session.now().layout()));
        session.selection().wires(Set.of(id));
        routeMissing();
    }

    void remove(Set<String> wires) {
        List<Wire> left = new ArrayList<>(session.now().layout().brief().wires());
        left.removeIf(wire -> wires.contains(wire.id()));
        session.selection().wires(Set.of());
        session.apply(
                "Take out " + named(wires, "wire ", ""),
                new SetWires(left, List.of()).apply(session.now().layout()));
    }

    private static String named(Set<String> wires, String ofOne, String ofMore) {
        return wires.size() == 1 ? ofOne + wires.iterator().next() : ofMore + wires.size() + " wires";
    }

    private boolean pinned(String wire) {
        Route route = session.now().layout().routes().get(wire);
        return route != null && route.pinned();
    }

    private void route(String name, Function<Scene, RoutePlan> how) {
        Optional<String> obstacle = obstacle();
        if (obstacle.isPresent()) {
            tell.accept(obstacle.get());
            return;
        }
        Scene scene = session.now().scene();
        work.start(
                name,
                () -> how.apply(scene),
                plan -> take(scene, plan),
                failure -> tell.accept(String.valueOf(failure.getMessage())));
    }

    private void take(Scene asked, RoutePlan plan) {
        if (session.now().scene() != asked) {
            tell.accept("The layout has changed while wires were routed. Route again.");
            return;
        }
        List<Route> changed = plan.routes().values().stream()
                .filter(route -> !route.equals(asked.layout().routes().get(route.wire())))
                .toList();
        if (!changed.isEmpty()) {
            session.apply(new SetRoutes(changed));
        }
        tell.accept(
                plan.unrouted().isEmpty()
                        ? changed.isEmpty() ? "Every wire is routed as it would be." : words(changed.size())
                        : plan.unrouted().get(0).reason());
    }

    private static String words(int count) {
        return count == 1 ? "1 wire was routed." : count + " wires were routed.";
    }
}
