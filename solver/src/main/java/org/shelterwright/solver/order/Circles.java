package org.shelterwright.solver.order;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.jgrapht.Graph;
import org.jgrapht.alg.cycle.CycleDetector;
import org.jgrapht.alg.shortestpath.BFSShortestPath;
import org.jgrapht.graph.DefaultDirectedGraph;
import org.shelterwright.layouts.layout.BoltDownOrder.Before;
import org.shelterwright.layouts.scene.PlacedUnit;

/**
 * Demands that contradict each other. An arrow a → b says that a must be in before b: a person set it, b stands on a, b alone
 * is in the way of a, or b alone hides the fixings of a. A circle of arrows cannot be met by any order.
 */
final class Circles {
    private final Removability removability;
    private final List<PlacedUnit> units;
    private final List<Before> before;

    private record Arrow(int from, int to, String why) {}

    Circles(Removability removability, List<Before> before) {
        this.removability = removability;
        this.units = removability.scene().units();
        this.before = before;
    }

    /** One sentence for a shortest circle among the units that stay stuck; empty if there is none of single arrows. */
    Optional<String> among(BitSet rest) {
        Graph<Integer, Arrow> graph = new DefaultDirectedGraph<>(Arrow.class);
        rest.stream().forEach(graph::addVertex);
        for (int from = rest.nextSetBit(0); from >= 0; from = rest.nextSetBit(from + 1)) {
            for (int to = rest.nextSetBit(0); to >= 0; to = rest.nextSetBit(to + 1)) {
                int a = from;
                int b = to;
                if (a != b) {
                    why(a, b).ifPresent(why -> graph.addEdge(a, b, new Arrow(a, b, why)));
                }
            }
        }
        List<Arrow> best = null;
        for (int vertex :
                new CycleDetector<>(graph).findCycles().stream().sorted().toList()) {
            for (Arrow first : graph.outgoingEdgesOf(vertex)) {
                var back = BFSShortestPath.findPathBetween(graph, first.to(), vertex);
                if (back != null && (best == null || back.getLength() + 1 < best.size())) {
                    best = new ArrayList<>(List.of(first));
                    best.addAll(back.getEdgeList());
                }
            }
        }
        return Optional.ofNullable(best).map(this::sentence);
    }

    private String sentence(List<Arrow> circle) {
        List<String> parts = new ArrayList<>();
        for (Arrow arrow : circle) {
            parts.add(name(arrow.from()) + " must be in before " + name(arrow.to()) + " (" + arrow.why() + ")");
        }
        return String.join(", ", parts) + ": no order meets all of this. Take one of the demands away.";
    }

    private Optional<String> why(int first, int then) {
        for (Before one : before) {
            if (one.first().equals(units.get(first).id())
                    && one.then().equals(units.get(then).id())) {
                String reason = one.reason();
                return Optional.of(reason == null ? "set" : "set: " + reason);
            }
        }
        if (removability.guest(first, then)) {
            return Optional.of("it carries it");
        }
        BitSet two = new BitSet();
        two.set(first);
        two.set(then);
        if (!removability.free(first, two)) {
            BitSet alone = new BitSet();
            alone.set(first);
            return removability.free(first, alone) ? Optional.of("which would be in its way") : Optional.empty();
        }
        return !removability.undone(first, two) ? Optional.of("which would hide its fixings") : Optional.empty();
    }

    private String name(int unit) {
        return units.get(unit).name();
    }
}
