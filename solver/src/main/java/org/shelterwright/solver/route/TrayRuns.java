package org.shelterwright.solver.route;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.cable.Bends;
import org.shelterwright.layouts.cable.TrayPath;
import org.shelterwright.solver.route.drop.Drop;
import org.shelterwright.solver.route.drop.DropSearch;
import org.shelterwright.solver.route.drop.Laying;
import org.shelterwright.solver.route.drop.Target;

/** Runs outside trays for wires: from a place to one tray, and from port to port where they are near. Safe for several threads. */
final class TrayRuns {
    /** Ports nearer than this are also joined outside trays (µm); common practice for short leads. */
    private static final int LEAD = 1_500 * Lengths.MM;

    /** How much farther, on a wall, a run to a place beside the cheapest may be (µm). */
    private static final int ASIDE = 1_000 * Lengths.MM;

    private static final int STEP = 100 * Lengths.MM;

    private final Drops drops;
    private final Set<String> only;

    /** What a way costs at least from where a run comes into a tray. */
    interface Rest {
        /** Laying cost from a station of the tray, which is at a place. */
        long from(int station, Point place);
    }

    /** @param only names of the trays to use; empty: all */
    TrayRuns(Drops drops, Set<String> only) {
        this.drops = drops;
        this.only = only;
    }

    /** The trays of a table, the nearest first. */
    List<Integer> nearest(TrayTable table, Point at) {
        int[] away = new int[table.trays().size()];
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < away.length; i++) {
            away[i] = away(table, i, at);
            order.add(i);
        }
        order.sort(Comparator.comparing((Integer i) -> away[i]).thenComparing(i -> i));
        return order;
    }

    /** Runs to one tray; what was found, barred places included. */
    List<TrayEntry> to(Ask ask, Point at, TrayTable table, int i, long limit) {
        return to(ask, at, table, i, limit, null, DropSearch.ANY_COST);
    }

    /**
     * The same, but for runs that are of no use.
     *
     * @param rest what a way costs at least beyond a run; {@code null}: nothing
     * @param most what both may cost together
     */
    List<TrayEntry> to(Ask ask, Point at, TrayTable table, int i, long limit, @Nullable Rest rest, long most) {
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
        boolean aside = !ask.barred().isEmpty() && !path.tray().closed();
        // The way on from a place beside the cheapest may be shorter by what lies between.
        long useful = aside ? most + Laying.TRAY * path.cableLength(2 * step(ask)) : most;
        List<TrayEntry> found = new ArrayList<>();
        for (Target target : targets) {
            long within = rest == null ? limit : Math.min(limit, useful - least(at, target, path, rest));
            if ((long) target.distance(at) * Laying.SURFACE > within) {
                continue;
            }
            Drop drop = drops.find(ask, at, target, within).orElse(null);
            if (drop != null) {
                found.add(entry(ask, path, i, drop));
                if (aside) {
                    aside(ask, at, path, i, drop, found);
                }
            }
        }
        return found;
    }

    /** What a way costs at least from where a run may come into a tray, which is near the place from which it begins. */
    private static long least(Point at, Target target, TrayPath path, Rest rest) {
        Box near = DropSearch.near(at, target);
        long least = DropSearch.ANY_COST;
        for (int i = 0; i < target.path().size(); i++) {
            Point a = target.path().get(Math.max(0, i - 1));
            Point b = target.path().get(i);
            Box straight = Box.between(a, a).hull(Box.between(b, b));
            if (near.touches(straight)) {
                Box part = near.intersection(straight);
                int from = path.stationOf(part.low());
                int to = path.stationOf(part.high());
                int length = Math.abs(to - from);
                // It changes no faster along the tray than a cable in it costs.
                long slope = (long) Laying.TRAY * Math.max(length, path.cableLength(length));
                least = Math.min(least, (rest.from(from, part.low()) + rest.from(to, part.high()) - slope) / 2);
            }
        }
        return least;
    }

    /** A run from port to port, if they are near; empty if there is none within a limit. */
    Optional<Drop> lead(Ask ask, Point a, Point b, long limit) {
        if (!only.isEmpty()
                || !ask.far() && Bends.distance(a, b) > LEAD
                || (long) Bends.distance(a, b) * Laying.SURFACE > limit) {
            return Optional.empty();
        }
        return drops.find(ask, a, Target.port(b), limit);
    }

    /**
     * What a run to another tray may cost to be of use: no more than the run to a known entry and the way from there to the
     * farthest place of that other tray.
     */
    static long limit(TrayTable table, TrayEntry first, int other) {
        int length = table.trays().get(other).length();
        long way = Math.min(
                table.length(first.tray(), first.station(), other, 0),
                table.length(first.tray(), first.station(), other, length));
        return way >= TrayTable.NONE
                ? DropSearch.ANY_COST
                : first.cost() + Laying.TRAY * (way + table.trays().get(other).cableLength(length));
    }

    /** Distance along the axes from a place to a tray (µm). */
    static int away(TrayTable table, int tray, Point at) {
        return new Target(table.trays().get(tray).tray().path(), true).distance(at);
    }

    /** More entries beside the cheapest one. */
    private void aside(Ask ask, Point at, TrayPath path, int i, Drop cheapest, List<TrayEntry> found) {
        int station = path.stationOf(cheapest.end());
        long limit = cheapest.cost() + (long) ASIDE * Laying.SURFACE;
        int step = step(ask);
        for (int off : new int[] {-2 * step, -step, step, 2 * step}) {
            int there = Math.max(0, Math.min(path.length(), station + off));
            drops.find(ask, at, Target.place(path.at(there)), limit)
                    .ifPresent(drop -> found.add(entry(ask, path, i, drop)));
        }
    }

    private static int step(Ask ask) {
        return Math.max(STEP, 2 * ask.radius());
    }

    private static TrayEntry entry(Ask ask, TrayPath path, int i, Drop drop) {
        return new TrayEntry(i, path.stationOf(drop.end()), drop, ask.barred().contains(drop.end()));
    }
}
