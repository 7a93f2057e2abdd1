package org.shelterwright.solver.route;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.jgrapht.Graph;
import org.jgrapht.alg.shortestpath.FloydWarshallShortestPaths;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.Tray;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.cable.TrayPath;

/**
 * Lengths through the trays of a body for one class of cables, between any two places: all pairs of ends and junctions are known
 * beforehand, so that a look-up costs a few additions. Immutable.
 */
public final class TrayTable {
    /** There is no way. */
    public static final long NONE = Long.MAX_VALUE / 8;

    private final List<TrayPath> trays = new ArrayList<>();
    private final List<Integer> numbers = new ArrayList<>();
    private final List<int[]> stations = new ArrayList<>();
    private final List<int[]> nodes = new ArrayList<>();
    private final long[][] between;
    private final long[][] least;
    private final long[][] leastFrom;

    private record Node(int tray, int station) {}

    public TrayTable(Body body, CableClass cableClass) {
        for (Tray tray : body.trays()) {
            if (!tray.partsFor(cableClass).isEmpty()) {
                trays.add(new TrayPath(tray));
                numbers.add(body.trays().indexOf(tray));
            }
        }
        List<Node> all = new ArrayList<>();
        Graph<Integer, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
        for (int i = 0; i < trays.size(); i++) {
            TreeSet<Integer> at = new TreeSet<>(List.of(0, trays.get(i).length()));
            for (int j = 0; j < trays.size(); j++) {
                if (i != j) {
                    at.addAll(meetings(trays.get(i), trays.get(j)));
                }
            }
            int[] list = at.stream().mapToInt(Integer::intValue).toArray();
            int[] own = new int[list.length];
            for (int k = 0; k < list.length; k++) {
                own[k] = all.size();
                graph.addVertex(all.size());
                all.add(new Node(i, list[k]));
                if (k > 0) {
                    join(graph, own[k - 1], own[k], trays.get(i).cableLength(list[k] - list[k - 1]));
                }
            }
            stations.add(list);
            nodes.add(own);
        }
        for (int a = 0; a < all.size(); a++) {
            for (int b = a + 1; b < all.size(); b++) {
                Node one = all.get(a);
                Node other = all.get(b);
                boolean meet = one.tray() != other.tray()
                        && trays.get(one.tray())
                                .at(one.station())
                                .equals(trays.get(other.tray()).at(other.station()));
                if (meet) {
                    join(graph, a, b, 0);
                }
            }
        }
        between = distances(graph, all.size());
        leastFrom = leastsFrom();
        least = leasts();
    }

    /** The trays that the class may use, in the order of the body. */
    public List<TrayPath> trays() {
        return trays;
    }

    /** The number of one of them among all trays of the body. */
    int number(int tray) {
        return numbers.get(tray);
    }

    /**
     * Length of the shortest way in trays (µm); {@link #NONE} if there is none.
     *
     * @param a number of the tray among {@link #trays}
     * @param atA station along it (µm)
     */
    public long length(int a, int atA, int b, int atB) {
        long best = a == b ? trays.get(a).cableLength(Math.abs(atA - atB)) : NONE;
        int[] ofA = stations.get(a);
        int[] ofB = stations.get(b);
        for (int i = 0; i < ofA.length; i++) {
            long first = trays.get(a).cableLength(Math.abs(atA - ofA[i]));
            for (int j = 0; j < ofB.length; j++) {
                long way = between[nodes.get(a)[i]][nodes.get(b)[j]];
                if (way < NONE) {
                    best = Math.min(best, first + way + trays.get(b).cableLength(Math.abs(atB - ofB[j])));
                }
            }
        }
        return best;
    }

    /** Length of the shortest way in trays from anywhere on one to anywhere on another (µm); at most {@link #NONE}. */
    long least(int a, int b) {
        return least[a][b];
    }

    /**
     * Length of the shortest way in trays from a place to anywhere on a tray (µm); {@link #NONE} if there is none.
     *
     * @param a number of the tray with the place
     * @param atA station along it (µm)
     */
    long least(int a, int atA, int b) {
        long best = a == b ? 0 : NONE;
        int[] ofA = stations.get(a);
        for (int i = 0; a != b && i < ofA.length; i++) {
            long way = leastFrom[nodes.get(a)[i]][b];
            if (way < NONE) {
                best = Math.min(best, trays.get(a).cableLength(Math.abs(atA - ofA[i])) + way);
            }
        }
        return best;
    }

    private long[][] leastsFrom() {
        long[][] found = new long[between.length][trays.size()];
        for (int one = 0; one < found.length; one++) {
            for (int b = 0; b < trays.size(); b++) {
                long shortest = NONE;
                for (int other : nodes.get(b)) {
                    shortest = Math.min(shortest, between[one][other]);
                }
                found[one][b] = shortest;
            }
        }
        return found;
    }

    private long[][] leasts() {
        long[][] found = new long[trays.size()][trays.size()];
        for (int a = 0; a < found.length; a++) {
            for (int b = 0; b < found.length; b++) {
                long shortest = a == b ? 0 : NONE;
                for (int one : nodes.get(a)) {
                    shortest = Math.min(shortest, leastFrom[one][b]);
                }
                found[a][b] = shortest;
            }
        }
        return found;
    }

    private static void join(Graph<Integer, DefaultWeightedEdge> graph, int a, int b, long length) {
        DefaultWeightedEdge edge = graph.addEdge(a, b);
        if (edge != null) {
            graph.setEdgeWeight(edge, length);
        }
    }

    private static long[][] distances(Graph<Integer, DefaultWeightedEdge> graph, int size) {
        long[][] found = new long[size][size];
        FloydWarshallShortestPaths<Integer, DefaultWeightedEdge> paths = new FloydWarshallShortestPaths<>(graph);
        for (int a = 0; a < size; a++) {
            for (int b = 0; b < size; b++) {
                double weight = paths.getPathWeight(a, b);
                found[a][b] = Double.isInfinite(weight) ? NONE : Math.round(weight);
            }
        }
        return found;
    }

    /** The stations of a tray at which another touches or crosses it. */
    private static List<Integer> meetings(TrayPath tray, TrayPath other) {
        List<Integer> found = new ArrayList<>();
        List<Point> points = new ArrayList<>(other.tray().path());
        points.addAll(tray.tray().path());
        points.addAll(Crossings.of(tray.tray().path(), other.tray().path()));
        for (Point point : points) {
            int at = tray.stationOf(point);
            if (at >= 0 && other.stationOf(point) >= 0) {
                found.add(at);
            }
        }
        return found;
    }
}
