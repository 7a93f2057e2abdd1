package org.shelterwright.solver.route;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.cable.Bends;
import org.shelterwright.solver.route.drop.DropSearch;
import org.shelterwright.solver.route.drop.Laying;

/**
 * The runs of a wire from one port to another, as few as it takes to find its cheapest way: the nearest tray of each end gives a
 * way, and a run to another tray is only looked for if a way over it could cost less. As long as trays have room, the cheapest
 * way is the same as over all runs.
 */
final class PairRuns {
    private final WebBuilder web;
    private final Ask ask;
    private final TrayTable table;
    private final End from;
    private final End to;
    private long best = DropSearch.ANY_COST;

    /** One end, with what is known of it. */
    private static final class End {
        private final int node;
        private final Point at;
        private final List<Integer> order;
        private final List<TrayEntry> found = new ArrayList<>();
        private final long[] least;
        private int next;

        End(int node, Point at, TrayTable table) {
            this.node = node;
            this.at = at;
            this.order = WebBuilder.nearest(table, at);
            this.least = new long[table.trays().size()];
            for (int i = 0; i < least.length; i++) {
                least[i] = (long) Laying.SURFACE * WebBuilder.away(table, i, at);
            }
        }
    }

    PairRuns(WebBuilder web, Ask ask, TrayTable table, int fromNode, int toNode, Point a, Point b) {
        this.web = web;
        this.ask = ask;
        this.table = table;
        this.from = new End(fromNode, a, table);
        this.to = new End(toNode, b, table);
    }

    void add() {
        first(from);
        first(to);
        join();
        best = Math.min(best, web.lead(ask, from.at, from.node, to.at, to.node, best));
        others(from, to);
        others(to, from);
    }

    /** Goes through the trays until one can be reached. */
    private void first(End end) {
        while (end.found.stream().allMatch(TrayEntry::barred) && end.next < end.order.size()) {
            look(end, end.order.get(end.next++), DropSearch.ANY_COST);
        }
    }

    private void look(End end, int tray, long limit) {
        List<TrayEntry> entries = web.entries(ask, end.node, end.at, table, tray, limit);
        if (!entries.isEmpty()) {
            end.least[tray] = entries.stream().mapToLong(TrayEntry::cost).min().orElse(0);
        }
        end.found.addAll(entries);
    }

    private void others(End end, End other) {
        for (; end.next < end.order.size(); end.next++) {
            int tray = end.order.get(end.next);
            long limit = best >= DropSearch.ANY_COST ? DropSearch.ANY_COST : best - rest(tray, end, other);
            TrayEntry first = end.found.stream()
                    .filter(entry -> !entry.barred())
                    .findFirst()
                    .orElse(null);
            if (first != null) {
                limit = Math.min(limit, WebBuilder.limit(table, first, tray));
            }
            if (end.least[tray] <= limit) {
                look(end, tray, limit);
                join();
            }
        }
    }

    /** What the way costs at least beyond the run to a tray: through trays and to the other end. */
    private long rest(int tray, End end, End other) {
        long apart = Bends.distance(end.at, other.at);
        long least = DropSearch.ANY_COST;
        for (int i = 0; i < other.least.length; i++) {
            long across = apart - end.least[tray] / Laying.SURFACE - other.least[i] / Laying.SURFACE;
            long way = Math.max(table.least(tray, i), Math.max(0, across));
            least = Math.min(least, other.least[i] + Laying.TRAY * Math.min(way, TrayTable.NONE / Laying.TRAY));
        }
        return least;
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
