package org.shelterwright.solver.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.cable.Bends;
import org.shelterwright.layouts.cable.Beside;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.cable.WireEnd;
import org.shelterwright.layouts.layout.Route;
import org.shelterwright.layouts.layout.Run;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.route.RoutePlan.Unrouted;

/**
 * One routing. It is done again, at most a few times, where a bend found no room, a cable of a family turned out too thin for
 * the length, or trays did not join the ends. Not for several threads.
 */
final class Routing {
    private static final int PASSES = 6;
    private static final int THICK = 15 * Lengths.MM;
    private static final double DETOUR = 1.5;

    private final Scene scene;
    private final CableNet net;
    private final @Nullable String alone;
    private final Set<String> trays;
    private final Map<String, Route> kept;
    private final Drops drops;
    private final CableChoice choice;
    private final Map<String, String> faults = new LinkedHashMap<>();
    private final Map<String, Route> outside = new LinkedHashMap<>();

    Routing(Scene scene, Map<String, Route> kept) {
        this(scene, kept, null, Set.of());
    }

    /**
     * @param alone the only wire to route; {@code null}: all that are not kept
     * @param trays the only trays to use; empty: all
     */
    Routing(Scene scene, Map<String, Route> kept, @Nullable String alone, Set<String> trays) {
        this.alone = alone;
        this.trays = trays;
        this.scene = scene;
        this.kept = kept;
        this.net = CableNet.of(scene);
        this.drops = new Drops(scene);
        this.choice = new CableChoice(scene);
    }

    RoutePlan plan() {
        List<Ask> asks = asks();
        Laid laid = lay(asks);
        Set<Ask> seen = new HashSet<>(asks);
        for (int pass = 1; pass < PASSES; pass++) {
            List<Ask> again = new ArrayList<>();
            List<Beside> besides = besides(laid);
            for (Ask ask : asks) {
                again.add(mended(ask, laid, besides));
            }
            if (seen.containsAll(again)) {
                break;
            }
            seen.addAll(again);
            asks = again;
            laid = lay(asks);
        }
        return plan(asks, laid);
    }

    /** Over the runs that cheapest ways need, and over all if trays have no room for that. */
    private Laid lay(List<Ask> asks) {
        if (!trays.isEmpty()) {
            return new Pass(scene, kept, drops, asks, trays, false).lay();
        }
        Laid laid = new Pass(scene, kept, drops, asks, trays, true).lay();
        return laid.rounds() == 0 && laid.within() ? laid : new Pass(scene, kept, drops, asks, trays, false).lay();
    }

    private RoutePlan plan(List<Ask> asks, Laid laid) {
        for (Ask ask : asks) {
            if (!laid.routes().containsKey(ask.id())) {
                faults.put(
                        ask.id(),
                        "No way was found for wire " + ask.id() + " from "
                                + ask.from().name() + " to "
                                + ask.to().name()
                                + ": its ends cannot be joined past what stands about. Move a unit, or"
                                + " give the body a tray between them.");
            }
        }
        Map<String, Route> routes = new LinkedHashMap<>();
        List<Unrouted> unrouted = new ArrayList<>();
        for (Wire wire : scene.brief().wires()) {
            Route route = laid.routes().get(wire.id());
            route = route == null ? kept.get(wire.id()) : route;
            route = route == null ? outside.get(wire.id()) : route;
            if (route != null) {
                routes.put(wire.id(), route);
            } else if (faults.containsKey(wire.id())) {
                unrouted.add(new Unrouted(wire.id(), faults.getOrDefault(wire.id(), "")));
            }
        }
        return new RoutePlan(routes, unrouted, laid.cost(), laid.bound(), laid.within(), laid.rounds());
    }

    private Ask mended(Ask ask, Laid laid, List<Beside> besides) {
        Route route = laid.routes().get(ask.id());
        if (route == null) {
            return ask.withFar();
        }
        Ask better = ask;
        Set<Point> tight = tight(route, ask.bendRadius());
        if (!tight.isEmpty()) {
            better = better.barring(tight);
        }
        List<Box> shunned = new ArrayList<>();
        for (Beside beside : besides) {
            Route power = laid.routes().getOrDefault(beside.power(), kept.get(beside.power()));
            if (beside.other().equals(ask.id()) && power != null) {
                shunned.addAll(Shunned.of(power, separation()));
            }
        }
        if (!shunned.isEmpty() && ask.shunned().isEmpty()) {
            better = better.shunning(shunned);
        }
        Optional<Cable> cable = choice.of(ask.laid(), lengthM(ask.laid().wire(), route));
        return cable.isPresent() && cable.get().areaMm2() > ask.cable().areaMm2() ? better.with(cable.get()) : better;
    }

    /** The places where it comes into or out of a tray with too little straight beside. */
    private static Set<Point> tight(Route route, int radius) {
        List<Point> path = route.path();
        Set<Point> tight = new HashSet<>();
        for (int leg = 0; leg + 1 < path.size(); leg++) {
            boolean begins = leg > 0;
            boolean ends = leg + 2 < path.size();
            int needed = (begins ? radius : 0) + (ends ? radius : 0);
            if (Bends.distance(path.get(leg), path.get(leg + 1)) < needed) {
                tight.add(path.get(leg));
                tight.add(path.get(leg + 1));
            }
        }
        Set<Point> changes = new HashSet<>();
        for (Run run : route.runs()) {
            if (run.tray() != null) {
                changes.add(run.first());
                changes.add(run.last());
            }
        }
        tight.retainAll(changes);
        return tight;
    }

    /** Pairs that run along each other farther than they may. */
    private List<Beside> besides(Laid laid) {
        double most = 1000 * scene.rules().valueOr(Figure.CABLE_PARALLEL, Double.MAX_VALUE / 1e6);
        Map<String, Route> all = new LinkedHashMap<>(kept);
        all.putAll(laid.routes());
        return net.besides(all.values(), laid.routes().keySet()).stream()
                .filter(beside -> beside.length() > most)
                .toList();
    }

    private int separation() {
        return (int) Math.round(1000 * scene.rules().valueOr(Figure.CABLE_SEPARATION, 0)) + THICK;
    }

    /** With what lies outside, and some for spare (m). */
    private static double lengthM(Wire wire, Route route) {
        long length = 0;
        for (Run run : route.runs()) {
            for (int i = 1; i < run.path().size(); i++) {
                length += Bends.distance(run.path().get(i - 1), run.path().get(i));
            }
        }
        Integer more = wire.outside();
        return (1.1 * length + (more == null ? 0 : more)) / Lengths.M + 0.5;
    }

    /** The wires to route, as they are asked for at first. */
    List<Ask> asks() {
        List<Ask> asks = new ArrayList<>();
        Map<String, Integer> buses = new HashMap<>();
        int owner = 0;
        for (LaidWire laid : net.wires()) {
            Wire wire = laid.wire();
            int number = owner++;
            if (wire.bus() != null) {
                number = buses.computeIfAbsent(
                        wire.bus(), bus -> buses.size() + scene.brief().wires().size());
            }
            WireEnd from = laid.from();
            WireEnd to = laid.to();
            if (alone != null && !alone.equals(wire.id())) {
                continue;
            }
            if (kept.containsKey(wire.id()) || !placed(laid, from, to) || from == null || to == null) {
                continue;
            }
            Point a = from.at();
            Point b = to.at();
            double lengthM = a == null || b == null ? 0 : DETOUR * Bends.distance(a, b) / Lengths.M;
            Integer more = wire.outside();
            Optional<Cable> cable = choice.of(laid, lengthM + (more == null ? 0 : more / (double) Lengths.M));
            if (cable.isEmpty()) {
                faults.put(
                        wire.id(),
                        "The cable of wire " + wire.id() + " is not in the catalog ("
                                + (wire.type() == null ? wire.family() : wire.type())
                                + "). Name one of: shelterwright catalog list --kind cable.");
            } else if (from.outside() && to.outside()) {
                outside.put(wire.id(), new Route(wire.id(), cable.get().id(), List.of(), null, false));
            } else {
                asks.add(new Ask(laid, from, to, cable.get(), number, Set.of(), List.of(), false));
            }
        }
        return asks;
    }

    private boolean placed(LaidWire laid, @Nullable WireEnd from, @Nullable WireEnd to) {
        String id = laid.wire().id();
        if (from == null || to == null) {
            faults.put(id, "Wire " + id + " ends at something that is not there. Correct it in the brief.");
            return false;
        }
        for (WireEnd end : List.of(from, to)) {
            if (end.at() == null && !end.outside()) {
                faults.put(id, "Wire " + id + " ends at " + end.name() + ", which is not placed. Place it first.");
                return false;
            }
        }
        return true;
    }
}
