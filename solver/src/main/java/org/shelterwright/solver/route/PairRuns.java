package org.shelterwright.solver.route;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.cable.Bends;
import org.shelterwright.solver.route.drop.Drop;
import org.shelterwright.solver.route.drop.DropSearch;
import org.shelterwright.solver.route.drop.Laying;

/**
 * The runs of a wire from one port to another, as few as it takes to find its cheapest way: the nearest tray of each end gives a
 * way, and a run to another tray is only looked for if a way over it could cost less. As long as trays have room, the cheapest
 * way is the same as over all runs.
 */
final class PairRuns {
    private final TrayRuns runs;
    private final Ask ask;
    private final TrayTable table;
    private final End from;
    private final End to;
    private @Nullable Drop lead;
    private long best = DropSearch.ANY_COST;

    /** A tray that is still to be looked at from an end. */
    private record Choice(End end, int tray, End other) {}

    /** One end, with what is known of it. */
    private static final class End {
        private final Point at;
        private final List<Integer> order;
        private final List<TrayEntry> found = new ArrayList<>();
        private final boolean[] looked;
        private final long[] least;
        private final List<List<TrayEntry>> byTray;
        private int firsts;

        End(Point at, TrayTable table, TrayRuns runs) {
            this.at = at;
            this.order = runs.nearest(table, at);
            this.looked = new boolean[table.trays().size()];
            this.byTray = new ArrayList<>(Collections.nCopies(looked.length, List.of()));
            this.least = new long[looked.length];
            for (int i = 0; i < least.length; i++) {
                least[i] = (long) Laying.SURFACE * TrayRuns.away(table, i, at);
            }
        }
    }

    /** Looks for the runs of a wire that this serves. */
    PairRuns(TrayRuns runs, Ask ask, TrayTable table, Point a, Point b) {
        this.runs = runs;
        this.ask = ask;
        this.table = table;
        this.from = new End(a, table, runs);
        this.to = new End(b, table, runs);
        first(from);
        first(to);
        join();
        lead = runs.lead(ask, a, b, best).orElse(null);
        if (lead != null) {
            best = Math.min(best, lead.cost());
        }
        others();
    }

    /** Takes the runs into a web, from the nodes of the ends. */
    void link(WebBuilder web, int fromNode, int toNode) {
        link(web, fromNode, from, 0, from.firsts);
        link(web, toNode, to, 0, to.firsts);
        if (lead != null) {
            web.link(ask, fromNode, toNode, lead);
        }
        link(web, fromNode, from, from.firsts, from.order.size());
        link(web, toNode, to, to.firsts, to.order.size());
    }

    private void link(WebBuilder web, int node, End end, int first, int behind) {
        for (int tray : end.order.subList(first, behind)) {
            end.byTray.get(tray).forEach(entry -> web.link(ask, node, table, entry));
        }
    }

    /** Goes through the trays until one can be reached. */
    private void first(End end) {
        while (end.found.stream().allMatch(TrayEntry::barred) && end.firsts < end.order.size()) {
            int tray = end.order.get(end.firsts++);
            take(end, tray, runs.to(ask, end.at, table, tray, DropSearch.ANY_COST));
        }
    }

    private void take(End end, int tray, List<TrayEntry> entries) {
        end.looked[tray] = true;
        if (!entries.isEmpty()) {
            end.least[tray] = entries.stream().mapToLong(TrayEntry::cost).min().orElse(0);
        }
        end.found.addAll(entries);
        end.byTray.set(tray, entries);
    }

    /** Looks at all other trays; once a way is known, first at those over which it may cost least, since that rules out others. */
    private void others() {
        List<Choice> open = new ArrayList<>();
        from.order.stream().skip(from.firsts).forEach(tray -> open.add(new Choice(from, tray, to)));
        to.order.stream().skip(to.firsts).forEach(tray -> open.add(new Choice(to, tray, from)));
        boolean sorted = false;
        while (!open.isEmpty()) {
            boolean joined = best < DropSearch.ANY_COST;
            if (joined && !sorted) {
                open.sort(Comparator.comparingLong(
                        one -> one.end().least[one.tray()] + rest(one.tray(), one.end(), one.other())));
                sorted = true;
            }
            Choice next = open.remove(0);
            look(next.end(), next.tray(), next.other(), joined);
        }
    }

    private void look(End end, int tray, End other, boolean joined) {
        long limit = joined ? most(tray, end, other) : DropSearch.ANY_COST;
        TrayEntry first =
                end.found.stream().filter(entry -> !entry.barred()).findFirst().orElse(null);
        if (first != null) {
            limit = Math.min(limit, TrayRuns.limit(table, first, tray));
        }
        List<TrayEntry> entries = List.of();
        if (end.least[tray] <= limit) {
            TrayRuns.Rest onward = joined ? (station, place) -> rest(tray, station, place, other) : null;
            entries = runs.to(ask, end.at, table, tray, limit, onward, best);
        }
        take(end, tray, entries);
        join();
    }

    /** What the way costs at least beyond the run to a tray: through trays and to the other end. */
    private long rest(int tray, End end, End other) {
        long apart = Bends.distance(end.at, other.at);
        long least = DropSearch.ANY_COST;
        for (int i = 0; i < other.least.length; i++) {
            long across = apart - end.least[tray] / Laying.SURFACE - other.least[i] / Laying.SURFACE;
            least = Math.min(least, through(other.least[i], Math.max(table.least(tray, i), across)));
        }
        return least;
    }

    /**
     * What a run to a tray may cost to be of use. The dearer it is, the farther it may lead along to the other end: of what it
     * costs more than on a wall, only the rest counts.
     */
    private long most(int tray, End end, End other) {
        long apart = Bends.distance(end.at, other.at);
        long most = 0;
        for (int i = 0; i < other.least.length; i++) {
            long left = best - other.least[i];
            long across = Laying.SURFACE * apart - other.least[i];
            long alongTrays = left - through(0, table.least(tray, i));
            long share = (left * Laying.SURFACE - Laying.TRAY * across) / (Laying.SURFACE - Laying.TRAY);
            most = Math.max(most, Math.min(alongTrays, share));
        }
        return most;
    }

    /** The same from where the run comes into the tray: exact over trays that were looked at from the other end. */
    private long rest(int tray, int station, Point place, End other) {
        long least = DropSearch.ANY_COST;
        for (int i = 0; i < other.least.length; i++) {
            if (!other.looked[i]) {
                long across = Bends.distance(place, other.at) - other.least[i] / Laying.SURFACE;
                least = Math.min(least, through(other.least[i], Math.max(table.least(tray, station, i), across)));
            }
        }
        for (TrayEntry entry : other.found) {
            if (!entry.barred()) {
                least = Math.min(
                        least, through(entry.cost(), table.length(tray, station, entry.tray(), entry.station())));
            }
        }
        return least;
    }

    private static long through(long run, long way) {
        return run + Laying.TRAY * Math.max(0, Math.min(way, TrayTable.NONE / Laying.TRAY));
    }

    /** Takes over the cheapest way that the known runs give. */
    private void join() {
        for (TrayEntry a : from.found) {
            for (TrayEntry b : to.found) {
                long way = a.barred() || b.barred()
                        ? TrayTable.NONE
                        : table.length(a.tray(), a.station(), b.tray(), b.station());
                if (way < TrayTable.NONE) {
                    best = Math.min(best, a.cost() + Laying.TRAY * way + b.cost());
                }
            }
        }
    }
}
