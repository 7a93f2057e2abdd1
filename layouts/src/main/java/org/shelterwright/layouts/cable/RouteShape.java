package org.shelterwright.layouts.cable;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.layout.Route;
import org.shelterwright.layouts.layout.Run;

/**
 * What follows from a route and the trays of the body alone, wherever units stand.
 *
 * @param path its corners and ends
 * @param length of the cable in it (µm)
 * @param tightest its tightest straight; {@code null} if it has no corner
 * @param stretches what it takes of trays
 * @param hull the least cuboid that holds it; {@code null} if it has no run
 * @param fault why it is no route: not along the axes, not joined, or beside its tray; {@code null} if it is one
 */
public record RouteShape(
        Route route,
        List<Point> path,
        long length,
        Bends.@Nullable Tightest tightest,
        List<Stretch> stretches,
        @Nullable Box hull,
        @Nullable String fault) {
    public RouteShape {
        path = List.copyOf(path);
        stretches = List.copyOf(stretches);
    }

    /**
     * A part of a tray that a cable lies in.
     *
     * @param part number of the compartment
     * @param from lower station (µm)
     * @param to upper station (µm)
     */
    public record Stretch(TrayPath tray, int part, int from, int to) {}

    static RouteShape of(Route route, Map<String, TrayPath> trays) {
        List<Stretch> stretches = new ArrayList<>();
        long length = 0;
        String fault = null;
        Point end = null;
        for (Run run : route.runs()) {
            if (end != null && !end.equals(run.first())) {
                fault = "its runs do not join";
            }
            end = run.last();
            for (int i = 1; i < run.path().size(); i++) {
                if (!alongAnAxis(run.path().get(i - 1), run.path().get(i))) {
                    fault = "it does not run along the axes of the body";
                }
            }
            TrayPath tray = run.tray() == null ? null : trays.get(run.tray());
            if (tray == null) {
                for (int i = 1; i < run.path().size(); i++) {
                    length += Bends.distance(run.path().get(i - 1), run.path().get(i));
                }
                continue;
            }
            for (int i = 1; i < run.path().size(); i++) {
                int from = tray.stationOf(run.path().get(i - 1));
                int to = tray.stationOf(run.path().get(i));
                int straight = Bends.distance(run.path().get(i - 1), run.path().get(i));
                if (from < 0 || to < 0 || Math.abs(to - from) != straight) {
                    fault = "it does not lie in the tray " + tray.tray().name();
                } else if (from != to) {
                    stretches.add(new Stretch(tray, run.compartment(), Math.min(from, to), Math.max(from, to)));
                    length += tray.cableLength(straight);
                }
            }
        }
        List<Point> path = route.path();
        return new RouteShape(route, path, length, Bends.of(path), stretches, hull(path), fault);
    }

    private static @Nullable Box hull(List<Point> path) {
        Box hull = null;
        for (Point point : path) {
            Box at = Box.between(point, point);
            hull = hull == null ? at : hull.hull(at);
        }
        return hull;
    }

    private static boolean alongAnAxis(Point a, Point b) {
        int off = 0;
        for (Axis axis : Axis.values()) {
            off += a.along(axis) == b.along(axis) ? 0 : 1;
        }
        return off <= 1;
    }
}
