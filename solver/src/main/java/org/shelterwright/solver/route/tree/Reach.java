package org.shelterwright.solver.route.tree;

import java.util.Arrays;
import java.util.PriorityQueue;

/** Dijkstra's distances in a part of a graph, with lengths of one's own for each way through an edge. */
final class Reach {
    final double[] distance;
    final int[] by;

    /** The length of an edge when it is gone from this node. */
    interface Length {
        double of(int edge, int from);
    }

    private record Entry(double distance, int node) implements Comparable<Entry> {
        @Override
        public int compareTo(Entry o) {
            int order = Double.compare(distance, o.distance);
            return order != 0 ? order : Integer.compare(node, o.node);
        }
    }

    /** From all nodes that are marked as sources. */
    Reach(Part part, boolean[] sources, Length length) {
        int size = part.node.length;
        distance = new double[size];
        by = new int[size];
        Arrays.fill(distance, Double.POSITIVE_INFINITY);
        Arrays.fill(by, -1);
        PriorityQueue<Entry> queue = new PriorityQueue<>();
        for (int i = 0; i < size; i++) {
            if (sources[i] && part.node[i]) {
                distance[i] = 0;
                queue.add(new Entry(0, i));
            }
        }
        boolean[] settled = new boolean[size];
        while (!queue.isEmpty()) {
            int node = queue.poll().node();
            if (settled[node]) {
                continue;
            }
            settled[node] = true;
            for (int edge : part.at[node]) {
                if (part.open(edge)) {
                    int next = part.other(edge, node);
                    double sum = distance[node] + length.of(edge, node);
                    if (sum < distance[next]) {
                        distance[next] = sum;
                        by[next] = edge;
                        queue.add(new Entry(sum, next));
                    }
                }
            }
        }
    }
}
