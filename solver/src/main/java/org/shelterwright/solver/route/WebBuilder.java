package org.shelterwright.solver.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.EntryPanel;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.cable.TrayPath;
import org.shelterwright.layouts.cable.WireEnd;
import org.shelterwright.layouts.ledger.cables.CableLimits;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.route.drop.Drop;
import org.shelterwright.solver.route.drop.DropSearch;
import org.shelterwright.solver.route.net.Link;

/**
 * Makes the network of trays, entry panels, and for each wire its own runs from its ports to the trays and, where they are near,
 * from port to port.
 */
final class WebBuilder {
    private final Scene scene;
    private final TrayRuns runs;
    private final TrayNodes trays;
    private final RouteMemory memory;
    private final Set<String> only;
    private final LinkList links = new LinkList();
    private final List<Integer> ends = new ArrayList<>();
    private final Map<String, Integer> terminals = new LinkedHashMap<>();
    private final Map<String, int[]> panels = new LinkedHashMap<>();
    private int nodes;

    /** @param only names of the trays to use; empty: all */
    WebBuilder(Scene scene, Drops drops, Set<String> only) {
        this.only = only;
        this.scene = scene;
        this.memory = RouteMemory.of(scene);
        this.runs = new TrayRuns(drops, only);
        this.trays = new TrayNodes(memory, () -> nodes++);
        for (EntryPanel panel : scene.body().entryPanels()) {
            int outer = nodes++;
            int inner = nodes++;
            panels.put(panel.name(), new int[] {outer, inner});
            links.add(
                    new Link(outer, inner, 0, panel.places(), true, classes(panel), Link.ANY),
                    new Piece.Passage(panel.name()));
        }
    }

    /**
     * Adds the runs of wires; gives the nodes of each.
     *
     * @param sparing whether to leave out runs that are of no use as long as all trays have room
     */
    List<int[]> add(List<Ask> asks, boolean sparing) {
        // Runs are looked for on all processors and taken in one after another, so that nodes have the same numbers.
        @Nullable PairRuns[] pairs = new PairRuns[asks.size()];
        List<Integer> order = byPort(asks);
        order.parallelStream().forEach(i -> pairs[i] = sparing ? pair(asks.get(i)) : null);
        order.parallelStream().filter(i -> pairs[i] == null).forEach(i -> lookFor(asks.get(i)));
        List<int[]> found = new ArrayList<>();
        for (int i = 0; i < pairs.length; i++) {
            PairRuns pair = pairs[i];
            found.add(pair == null ? add(asks.get(i)) : add(asks.get(i), pair));
        }
        return found;
    }

    /** The numbers of all wires, those that share a port beside each other: they ask much the same, and one after another asks it once. */
    private static List<Integer> byPort(List<Ask> asks) {
        Map<String, Integer> wires = new HashMap<>();
        for (Ask ask : asks) {
            wires.merge(ask.from().name(), 1, Integer::sum);
            wires.merge(ask.to().name(), 1, Integer::sum);
        }
        Map<String, List<Integer>> groups = new LinkedHashMap<>();
        for (int i = 0; i < asks.size(); i++) {
            String from = asks.get(i).from().name();
            String to = asks.get(i).to().name();
            String busier = wires.getOrDefault(to, 0) > wires.getOrDefault(from, 0) ? to : from;
            groups.computeIfAbsent(busier, key -> new ArrayList<>()).add(i);
        }
        return groups.values().stream().flatMap(List::stream).toList();
    }

    /** The runs of a wire from port to port; {@code null} if it is of a bus or goes through an entry panel. */
    private @Nullable PairRuns pair(Ask ask) {
        Point a = ask.from().at();
        Point b = ask.to().at();
        boolean alone = ask.laid().wire().bus() == null
                && ask.from().panel() == null
                && ask.to().panel() == null;
        return alone && a != null && b != null
                ? new PairRuns(runs, ask, memory.table(ask.cable().cableClass()), a, b)
                : null;
    }

    private int[] add(Ask ask, PairRuns pair) {
        int from = nodes++;
        int to = nodes++;
        ends.add(from);
        ends.add(to);
        pair.link(this, from, to);
        return new int[] {from, to};
    }

    private int[] add(Ask ask) {
        int from = terminal(ask, ask.from());
        int to = terminal(ask, ask.to());
        lead(ask, from, to);
        return new int[] {from, to};
    }

    Web web() {
        trays.link(CableLimits.fill(scene), only, links);
        return new Web(nodes, links, ends);
    }

    private static int classes(EntryPanel panel) {
        return panel.classes().isEmpty() ? (1 << CableClass.values().length) - 1 : TrayNodes.bits(panel.classes());
    }

    private int terminal(Ask ask, WireEnd end) {
        String key = ask.owner() + " " + end.name() + " " + end.outside();
        Integer known = terminals.get(key);
        if (known != null && ask.laid().wire().bus() != null) {
            return known;
        }
        int node = nodes++;
        ends.add(node);
        terminals.put(key, node);
        Point at = end.at();
        if (end.panel() == null && at != null) {
            entries(ask, node, at);
        } else {
            for (EntryPanel panel : scene.body().entryPanels()) {
                int[] pair = panels.get(panel.name());
                if (pair != null && serves(ask, end, panel)) {
                    links.add(own(ask, node, pair[0], 0), new Piece.Joint());
                    entries(ask, pair[1], WireEnd.middle(panel));
                }
            }
        }
        return node;
    }

    private static boolean serves(Ask ask, WireEnd end, EntryPanel panel) {
        EntryPanel own = end.panel();
        String wished = ask.laid().wire().panel();
        return own != null ? own.name().equals(panel.name()) : wished == null || wished.equals(panel.name());
    }

    /**
     * Runs to the trays that the class may use, the nearest first. A run to another tray is of no use if it costs more than the
     * run to the nearest and the way from there to the farthest place of that other tray.
     */
    private List<TrayEntry> entries(Ask ask, Point at) {
        TrayTable table = memory.table(ask.cable().cableClass());
        List<TrayEntry> all = new ArrayList<>();
        TrayEntry first = null;
        for (int i : runs.nearest(table, at)) {
            long limit = first == null ? DropSearch.ANY_COST : TrayRuns.limit(table, first, i);
            List<TrayEntry> found = runs.to(ask, at, table, i, limit);
            all.addAll(found);
            first = first == null && !found.isEmpty() ? found.get(0) : first;
        }
        return all;
    }

    private void entries(Ask ask, int node, Point at) {
        TrayTable table = memory.table(ask.cable().cableClass());
        entries(ask, at).forEach(entry -> link(ask, node, table, entry));
    }

    /** Looks for runs that are asked for again at once: by then they are known. */
    private void lookFor(Ask ask) {
        for (WireEnd end : List.of(ask.from(), ask.to())) {
            places(ask, end, 0).forEach(place -> entries(ask, place.at()));
        }
    }

    /** Takes in a run that may be used. */
    void link(Ask ask, int node, TrayTable table, TrayEntry entry) {
        TrayPath path = table.trays().get(entry.tray());
        if (!entry.barred()) {
            for (int part : path.tray().partsFor(ask.cable().cableClass())) {
                links.add(
                        own(ask, node, trays.node(table.number(entry.tray()), part, entry.station()), entry.cost()),
                        new Piece.Free(entry.drop()));
            }
        }
    }

    private void lead(Ask ask, int from, int to) {
        for (Place a : places(ask, ask.from(), from)) {
            for (Place b : places(ask, ask.to(), to)) {
                runs.lead(ask, a.at(), b.at(), DropSearch.ANY_COST)
                        .ifPresent(drop -> link(ask, a.node(), b.node(), drop));
            }
        }
    }

    /** Takes in a run from port to port. */
    void link(Ask ask, int from, int to, Drop drop) {
        links.add(own(ask, from, to, drop.cost()), new Piece.Free(drop));
    }

    private record Place(Point at, int node) {}

    /** Where a run inside the body may begin for an end. */
    private List<Place> places(Ask ask, WireEnd end, int terminal) {
        Point at = end.at();
        if (end.panel() == null && at != null) {
            return List.of(new Place(at, terminal));
        }
        List<Place> places = new ArrayList<>();
        for (EntryPanel panel : scene.body().entryPanels()) {
            int[] pair = panels.get(panel.name());
            if (pair != null && serves(ask, end, panel)) {
                places.add(new Place(WireEnd.middle(panel), pair[1]));
            }
        }
        return places;
    }

    private static Link own(Ask ask, int a, int b, long cost) {
        return new Link(a, b, cost, Link.FREE, false, ask.classBit(), ask.owner());
    }
}
