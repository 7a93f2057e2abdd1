package org.shelterwright.solver.route;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shelterwright.catalog.body.EntryPanel;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.cable.Bends;
import org.shelterwright.layouts.cable.TrayPath;
import org.shelterwright.layouts.cable.WireEnd;
import org.shelterwright.layouts.ledger.cables.CableLimits;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.route.drop.Drop;
import org.shelterwright.solver.route.drop.DropSearch;
import org.shelterwright.solver.route.drop.Laying;
import org.shelterwright.solver.route.drop.Target;
import org.shelterwright.solver.route.net.Link;

/**
 * Makes the network of trays, entry panels, and for each wire its own runs from its ports to the trays and, where they are near,
 * from port to port.
 */
final class WebBuilder {
    /** Ports nearer than this are also joined outside trays (µm); common practice for short leads. */
    private static final int LEAD = 1_500 * Lengths.MM;

    /** How much farther, on a wall, a run to a place beside the cheapest may be (µm). */
    private static final int ASIDE = 1_000 * Lengths.MM;

    private static final int STEP = 100 * Lengths.MM;

    private final Scene scene;
    private final Drops drops;
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
        this.drops = drops;
        this.memory = RouteMemory.of(scene);
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
     * Adds the runs of a wire; gives its nodes.
     *
     * @param sparing whether to leave out runs that are of no use as long as all trays have room
     */
    int[] add(Ask ask, boolean sparing) {
        Point a = ask.from().at();
        Point b = ask.to().at();
        boolean alone = ask.laid().wire().bus() == null
                && ask.from().panel() == null
                && ask.to().panel() == null;
        if (sparing && alone && a != null && b != null) {
            int from = nodes++;
            int to = nodes++;
            ends.add(from);
            ends.add(to);
            new PairRuns(this, ask, memory.table(ask.cable().cableClass()), from, to, a, b).add();
            return new int[] {from, to};
        }
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
    private void entries(Ask ask, int node, Point at) {
        TrayTable table = memory.table(ask.cable().cableClass());
        TrayEntry first = null;
        for (int i : nearest(table, at)) {
            long limit = first == null ? DropSearch.ANY_COST : limit(table, first, i);
            List<TrayEntry> found = entries(ask, node, at, table, i, limit);
            first = first == null && !found.isEmpty() ? found.get(0) : first;
        }
    }

    /** The trays of a table, the nearest first. */
    static List<Integer> nearest(TrayTable table, Point at) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < table.trays().size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparing((Integer i) -> away(table, i, at)).thenComparing(i -> i));
        return order;
    }

    /** Runs to one tray; what was found, barred places included. */
    List<TrayEntry> entries(Ask ask, int node, Point at, TrayTable table, int i, long limit) {
        if ((long) away(table, i, at) * Laying.SURFACE > limit) {
            return List.of();
        }
        TrayPath path = table.trays().get(i);
        if (!only.isEmpty() && !only.contains(path.tray().name())) {
            return List.of();
        }
        List<Target> targets = path.tray().closed()
                ? List.of(Target.place(path.at(0)), Target.place(path.at(path.length())))
                : List.of(new Target(path.tray().path(), true));
        List<TrayEntry> found = new ArrayList<>();
        for (Target target : targets) {
            Drop drop = drops.find(ask, at, target, limit).orElse(null);
            if (drop != null) {
                found.add(entry(ask, node, table, i, drop));
                if (!ask.barred().isEmpty() && !path.tray().closed()) {
                    aside(ask, node, at, table, i, drop, found);
                }
            }
        }
        return found;
    }

    static long limit(TrayTable table, TrayEntry first, int other) {
        int length = table.trays().get(other).length();
        long way = Math.min(
                table.length(first.tray(), first.station(), other, 0),
                table.length(first.tray(), first.station(), other, length));
        return way >= TrayTable.NONE
                ? DropSearch.ANY_COST
                : first.cost() + Laying.TRAY * (way + table.trays().get(other).cableLength(length));
    }

    /** More entries beside the cheapest one. */
    private void aside(Ask ask, int node, Point at, TrayTable table, int i, Drop cheapest, List<TrayEntry> found) {
        TrayPath path = table.trays().get(i);
        int station = path.stationOf(cheapest.end());
        long limit = cheapest.cost() + (long) ASIDE * Laying.SURFACE;
        int step = Math.max(STEP, 2 * ask.radius());
        for (int off : new int[] {-2 * step, -step, step, 2 * step}) {
            int there = Math.max(0, Math.min(path.length(), station + off));
            drops.find(ask, at, Target.place(path.at(there)), limit)
                    .ifPresent(drop -> found.add(entry(ask, node, table, i, drop)));
        }
    }

    private TrayEntry entry(Ask ask, int node, TrayTable table, int i, Drop drop) {
        TrayPath path = table.trays().get(i);
        int station = path.stationOf(drop.end());
        boolean barred = ask.barred().contains(drop.end());
        if (!barred) {
            for (int part : path.tray().partsFor(ask.cable().cableClass())) {
                links.add(
                        own(ask, node, trays.node(table.number(i), part, station), drop.cost()), new Piece.Free(drop));
            }
        }
        return new TrayEntry(i, station, drop.cost(), barred);
    }

    /** Distance along the axes from a place to a tray (µm). */
    static int away(TrayTable table, int tray, Point at) {
        return new Target(table.trays().get(tray).tray().path(), true).distance(at);
    }

    private void lead(Ask ask, int from, int to) {
        for (Place a : places(ask, ask.from(), from)) {
            for (Place b : places(ask, ask.to(), to)) {
                lead(ask, a.at(), a.node(), b.at(), b.node(), DropSearch.ANY_COST);
            }
        }
    }

    /** A run from port to port, if they are near; its cost, or {@link DropSearch#ANY_COST} if there is none within a limit. */
    long lead(Ask ask, Point a, int from, Point b, int to, long limit) {
        if (!only.isEmpty()
                || !ask.far() && Bends.distance(a, b) > LEAD
                || (long) Bends.distance(a, b) * Laying.SURFACE > limit) {
            return DropSearch.ANY_COST;
        }
        Drop drop = drops.find(ask, a, Target.port(b), limit).orElse(null);
        if (drop == null) {
            return DropSearch.ANY_COST;
        }
        links.add(own(ask, from, to, drop.cost()), new Piece.Free(drop));
        return drop.cost();
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
