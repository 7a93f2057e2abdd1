package org.shelterwright.solver.transport;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shelterwright.layouts.transport.Stand;

/** Places slabs one behind the other on a deck, around those that are fixed. */
final class LinePlan {
    /** Least gap between slabs and to the ends, so that lashings and people have room (µm). */
    private static final int GAP = 300_000;

    private static final int WIDEST_GAP = 1_300_000;
    private static final int END = 100_000;

    private final int deck;
    private final List<Slab> fixed;

    LinePlan(int deck, List<Slab> fixed) {
        this.deck = deck;
        this.fixed = new ArrayList<>(fixed);
        this.fixed.sort(Comparator.comparingInt(Slab::x));
    }

    private record Span(int from, int to) {
        int length() {
            return to - from;
        }
    }

    /** All ways to share an order of slabs out over the free spans; each evenly spaced in three positions. */
    List<List<Stand>> placed(List<Slab> order) {
        List<Span> spans = new ArrayList<>();
        int from = 0;
        for (Slab slab : fixed) {
            spans.add(new Span(from, slab.x()));
            from = slab.x() + slab.length();
        }
        spans.add(new Span(from, deck));
        List<List<Stand>> found = new ArrayList<>();
        share(order, spans, 0, new ArrayList<>(), found);
        return found;
    }

    private void share(List<Slab> order, List<Span> spans, int span, List<Stand> before, List<List<Stand>> found) {
        if (span == spans.size()) {
            if (order.isEmpty()) {
                List<Stand> whole = new ArrayList<>(before);
                fixed.forEach(slab -> whole.addAll(slab.at(slab.x())));
                found.add(whole);
            }
            return;
        }
        for (int count = 0; count <= order.size(); count++) {
            List<Slab> here = order.subList(0, count);
            Span free = spans.get(span);
            long need = here.stream().mapToLong(Slab::length).sum();
            int gaps = here.size() + 1;
            long left = free.length() - need;
            int edges = (free.from() == 0 ? 1 : 0) + (free.to() == deck ? 1 : 0);
            if (count > 0 && left < (long) GAP * (gaps - edges) + (long) END * edges) {
                break;
            }
            for (int lean = count == 0 ? 1 : 0; lean < (count == 0 ? 2 : 3); lean++) {
                List<Stand> more = new ArrayList<>(before);
                more.addAll(spaced(here, free, left, lean));
                share(order.subList(count, order.size()), spans, span + 1, more, found);
            }
        }
    }

    /** Evenly spaced with the rest of the free length behind (0), on both sides (1) or before (2). */
    private List<Stand> spaced(List<Slab> slabs, Span span, long left, int lean) {
        List<Stand> stands = new ArrayList<>();
        if (slabs.isEmpty()) {
            return stands;
        }
        int between = (int) Math.max(
                slabs.size() == 1 ? 0 : GAP, Math.min(WIDEST_GAP, left / (slabs.size() + 1)));
        long rest = left - (long) between * (slabs.size() - 1);
        int first = span.from() == 0 ? END : GAP;
        int last = span.to() == deck ? END : GAP;
        long at = span.from()
                + switch (lean) {
                    case 0 -> Math.max(first, Math.min(WIDEST_GAP, rest - last));
                    case 1 -> Math.max(first, rest / 2);
                    default -> Math.max(first, rest - Math.max(last, Math.min(WIDEST_GAP, rest - first)));
                };
        for (Slab slab : slabs) {
            stands.addAll(slab.at(whole(at)));
            at += slab.length() + between;
        }
        return stands;
    }

    /** Everything from the rear end on with the least gaps, though it does not fit, so that the ledger can say by how much. */
    List<Stand> crowded(List<Slab> free) {
        List<Stand> stands = new ArrayList<>();
        fixed.forEach(slab -> stands.addAll(slab.at(slab.x())));
        long at = END;
        for (Slab slab : fixed) {
            at = Math.max(at, slab.x() + (long) slab.length() + GAP);
        }
        for (Slab slab : free) {
            stands.addAll(slab.at(whole(Math.min(at, 190_000_000L))));
            at += slab.length() + (long) GAP;
        }
        return stands;
    }

    /** Whole millimetres: nobody sets a vehicle down finer. */
    private static int whole(long micrometres) {
        return (int) (micrometres / 1000 * 1000);
    }
}
