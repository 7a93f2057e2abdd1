package org.shelterwright.solver.route;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.cable.RouteShape;
import org.shelterwright.layouts.layout.Run;
import org.shelterwright.solver.route.net.Network;

/** The network of one question, and how ways through it become runs. */
final class Web {
    private final LinkList links;
    private final Network network;
    private final Map<String, List<Integer>> inTray = new HashMap<>();
    private final List<Integer> passages = new ArrayList<>();

    Web(int nodes, LinkList links, List<Integer> ends) {
        this.links = links;
        this.network = new Network(nodes, links.links(), ends);
        for (int i = 0; i < links.size(); i++) {
            if (links.piece(i) instanceof Piece.InTray in) {
                inTray.computeIfAbsent(in.tray().tray().name(), name -> new ArrayList<>())
                        .add(i);
            } else if (links.piece(i) instanceof Piece.Passage) {
                passages.add(i);
            }
        }
    }

    Network network() {
        return network;
    }

    Piece piece(int link) {
        return links.piece(link);
    }

    /** What a route that stays takes of each link. */
    void take(RouteShape shape, long size, @Nullable String panel, long[] taken) {
        Set<Integer> full = new HashSet<>();
        for (RouteShape.Stretch stretch : shape.stretches()) {
            for (int i : inTray.getOrDefault(stretch.tray().tray().name(), List.of())) {
                if (links.piece(i) instanceof Piece.InTray in && lies(stretch, in) && full.add(i)) {
                    taken[i] += size;
                }
            }
        }
        for (int i : passages) {
            if (links.piece(i) instanceof Piece.Passage passage
                    && passage.panel().equals(panel)) {
                taken[i]++;
            }
        }
    }

    private static boolean lies(RouteShape.Stretch stretch, Piece.InTray in) {
        return stretch.from() < in.to() && in.from() < stretch.to() && stretch.part() == in.part();
    }

    /** The panel that a way passes; {@code null} if none. */
    @Nullable
    String panel(int[] way) {
        for (int link : way) {
            if (links.piece(link) instanceof Piece.Passage passage) {
                return passage.panel();
            }
        }
        return null;
    }

    /** The runs of a way that begins at a node. */
    List<Run> runs(int from, int[] way) {
        List<Run> runs = new ArrayList<>();
        Piece.InTray begun = null;
        int first = 0;
        int last = 0;
        int node = from;
        for (int number : way) {
            boolean forth = network.link(number).a() == node;
            Piece piece = links.piece(number);
            if (piece instanceof Piece.InTray in) {
                int start = forth ? in.from() : in.to();
                if (begun == null || begun.tray() != in.tray() || begun.part() != in.part() || start != last) {
                    close(begun, first, last, runs);
                    begun = in;
                    first = start;
                }
                last = forth ? in.to() : in.from();
            } else if (piece instanceof Piece.Free free) {
                close(begun, first, last, runs);
                begun = null;
                if (free.drop().path().size() > 1) {
                    List<Point> path = new ArrayList<>(free.drop().path());
                    if (!forth) {
                        Collections.reverse(path);
                    }
                    runs.add(Run.free(path));
                }
            }
            node = network.link(number).other(node);
        }
        close(begun, first, last, runs);
        return runs;
    }

    private static void close(Piece.@Nullable InTray begun, int first, int last, List<Run> runs) {
        if (begun != null && first != last) {
            Integer part = begun.tray().tray().parts().size() > 1 ? Integer.valueOf(begun.part()) : null;
            runs.add(new Run(begun.tray().tray().name(), part, begun.tray().between(first, last)));
        }
    }
}
