package org.shelterwright.solver.route;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.RouteShape;
import org.shelterwright.layouts.layout.Route;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.route.drop.Laying;
import org.shelterwright.solver.route.net.Negotiation;
import org.shelterwright.solver.route.net.Strand;
import org.shelterwright.solver.route.net.Ways;

/** Lays all asked wires once: the trees of buses first, then all others together in what they leave. Not for several threads. */
final class Pass {
    private static final double METRE = (double) Laying.TRAY * Lengths.M;

    private final Scene scene;
    private final List<Ask> asks;
    private final Map<String, Route> kept;
    private final Web web;
    private final List<int[]> nodes;
    private final Map<String, Route> routes = new LinkedHashMap<>();
    private long cost;
    private long bound;

    Pass(Scene scene, Map<String, Route> kept, Drops drops, List<Ask> asks, Set<String> trays, boolean sparing) {
        this.scene = scene;
        this.asks = asks;
        this.kept = kept;
        WebBuilder builder = new WebBuilder(scene, drops, trays);
        this.nodes = builder.add(asks, sparing);
        this.web = builder.web();
    }

    Laid lay() {
        long[] taken = new long[web.network().links().size()];
        keep(taken);
        buses(taken);
        List<Integer> single = new ArrayList<>();
        List<Strand> strands = new ArrayList<>();
        for (int i = 0; i < asks.size(); i++) {
            Ask ask = asks.get(i);
            if (ask.laid().wire().bus() == null) {
                single.add(i);
                strands.add(new Strand(nodes.get(i)[0], nodes.get(i)[1], ask.size(), ask.classBit(), ask.owner()));
            }
        }
        Ways ways = Negotiation.solve(web.network().without(taken), strands);
        for (int k = 0; k < single.size(); k++) {
            int[] way = ways.ways().get(k);
            if (way != null) {
                put(asks.get(single.get(k)), nodes.get(single.get(k))[0], way);
            }
        }
        return new Laid(
                routes, (cost + ways.cost()) / METRE, (bound + ways.bound()) / METRE, ways.within(), ways.rounds());
    }

    private void put(Ask ask, int from, int[] way) {
        boolean leaves = ask.from().outside() || ask.to().outside();
        routes.put(
                ask.id(),
                new Route(ask.id(), ask.cable().id(), web.runs(from, way), leaves ? web.panel(way) : null, false));
    }

    private void keep(long[] taken) {
        Map<String, Cable> cables = scene.layout().parts().cables();
        for (Route route : kept.values()) {
            RouteShape shape = CableNet.of(scene).sheet().shape(route.wire()).orElse(null);
            Cable cable = cables.get(route.cable());
            if (shape != null && cable != null) {
                long size = (long) Math.ceil(TrayNodes.SIZE * cable.areaMm2());
                web.take(shape, size, route.panel(), taken);
            }
        }
    }

    private void buses(long[] taken) {
        Map<String, List<Integer>> groups = new LinkedHashMap<>();
        for (int i = 0; i < asks.size(); i++) {
            String bus = asks.get(i).laid().wire().bus();
            if (bus != null) {
                groups.computeIfAbsent(bus, key -> new ArrayList<>()).add(i);
            }
        }
        for (List<Integer> group : groups.values()) {
            List<BusTree.Branch> branches = new ArrayList<>();
            group.forEach(i -> branches.add(new BusTree.Branch(asks.get(i), nodes.get(i)[0], nodes.get(i)[1])));
            BusTree tree = new BusTree(web.network(), branches);
            tree.ways().forEach((ask, way) -> {
                put(ask, way.from(), way.links());
                for (int link : way.links()) {
                    taken[link] += web.network().link(link).counted() ? 1 : ask.size();
                }
            });
            cost += tree.cost();
            bound += tree.bound();
        }
    }
}
