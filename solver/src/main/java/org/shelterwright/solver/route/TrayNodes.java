package org.shelterwright.solver.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.IntSupplier;
import org.shelterwright.catalog.body.Compartment;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.layouts.cable.Fill;
import org.shelterwright.layouts.cable.TrayPath;
import org.shelterwright.solver.route.drop.Laying;
import org.shelterwright.solver.route.net.Link;

/** The trays of a body as nodes at their ends, junctions and entries, and links between them. */
final class TrayNodes {
    /** A cross-section of one mm² counts so much. */
    static final double SIZE = 1_000;

    private final RouteMemory memory;
    private final List<TrayPath> trays;
    private final List<List<TreeMap<Integer, Integer>>> stations = new ArrayList<>();
    private final IntSupplier newNode;

    TrayNodes(RouteMemory memory, IntSupplier newNode) {
        this.memory = memory;
        this.trays = memory.trays();
        this.newNode = newNode;
        for (TrayPath tray : trays) {
            List<TreeMap<Integer, Integer>> parts = new ArrayList<>();
            tray.tray().parts().forEach(part -> parts.add(new TreeMap<>()));
            stations.add(parts);
        }
    }

    List<TrayPath> trays() {
        return trays;
    }

    /** The node at a station of a compartment. */
    int node(int tray, int part, int station) {
        return stations.get(tray).get(part).computeIfAbsent(station, at -> newNode.getAsInt());
    }

    /**
     * Takes the links between all nodes so far.
     *
     * @param only names of the trays to use; empty: all
     */
    void link(Fill fill, Set<String> only, LinkList links) {
        for (RouteMemory.Meeting meeting : memory.meetings()) {
            List<Compartment> ofA = trays.get(meeting.a()).tray().parts();
            List<Compartment> ofB = trays.get(meeting.b()).tray().parts();
            for (int pa = 0; pa < ofA.size(); pa++) {
                for (int pb = 0; pb < ofB.size(); pb++) {
                    int shared = bits(ofA.get(pa).classes()) & bits(ofB.get(pb).classes());
                    if (shared != 0) {
                        int a = node(meeting.a(), pa, meeting.atA());
                        int b = node(meeting.b(), pb, meeting.atB());
                        links.add(new Link(a, b, 0, Link.FREE, false, shared, Link.ANY), new Piece.Joint());
                    }
                }
            }
        }
        for (int tray = 0; tray < trays.size(); tray++) {
            boolean open =
                    only.isEmpty() || only.contains(trays.get(tray).tray().name());
            for (int part = 0; open && part < stations.get(tray).size(); part++) {
                link(trays.get(tray), part, stations.get(tray).get(part), fill, links);
            }
        }
    }

    private static void link(TrayPath tray, int part, TreeMap<Integer, Integer> nodes, Fill fill, LinkList links) {
        long capacity = (long) Math.floor(
                SIZE * fill.always(tray.tray().closed()) * tray.tray().areaMm2(part));
        int classes = bits(tray.tray().parts().get(part).classes());
        Map.Entry<Integer, Integer> before = null;
        for (Map.Entry<Integer, Integer> entry : nodes.entrySet()) {
            if (before != null) {
                int stretch = entry.getKey() - before.getKey();
                long cost = tray.cableLength(stretch) * Laying.TRAY;
                links.add(
                        new Link(before.getValue(), entry.getValue(), cost, capacity, false, classes, Link.ANY),
                        new Piece.InTray(tray, part, before.getKey(), entry.getKey()));
            }
            before = entry;
        }
    }

    static int bits(List<CableClass> classes) {
        int bits = 0;
        for (CableClass one : classes) {
            bits |= 1 << one.ordinal();
        }
        return bits;
    }
}
