package org.shelterwright.solver.transport;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.transport.Stand;

/**
 * Places slabs one behind the other on a deck, around those that are fixed. Beside vehicles there is room for lashings that lead
 * outward and for the people who tighten them.
 */
final class LinePlan {
    private static final int GAP = 300_000;
    private static final int BESIDE_VEHICLE = 700_000;
    private static final int BETWEEN_VEHICLES = 1_000_000;
    private static final int MOST_EXTRA = 600_000;
    private static final int END = 100_000;

    private final int deck;
    private final List<Slab> fixed;

    LinePlan(int deck, List<Slab> fixed) {
        this.deck = deck;
        this.fixed = new ArrayList<>(fixed);
        this.fixed.sort(Comparator.comparingInt(Slab::x));
    }

    /** Least gap between neighbours (µm). */
    private static int gap(@Nullable Slab a, @Nullable Slab b) {
        boolean first = a != null && a.wheeled();
        boolean second = b != null && b.wheeled();
        if (first && second) {
            return BETWEEN_VEHICLES;
        }
        return first || second ? BESIDE_VEHICLE : a == null || b == null ? END : GAP;
    }

    private record Span(
            int from,
            int to,
            @Nullable Slab before,
            @Nullable Slab after) {
        int length() {
            return to - from;
        }
    }

    /** All ways to share an order of slabs out over the free spans; each evenly spaced in three positions. */
    List<List<Slab>> placed(List<Slab> order) {
        List<Span> spans = new ArrayList<>();
        int from = 0;
        Slab before = null;
        for (Slab slab : fixed) {
            spans.add(new Span(from, slab.x(), before, slab));
            from = slab.x() + slab.length();
            before = slab;
        }
        spans.add(new Span(from, deck, before, null));
        List<List<Slab>> found = new ArrayList<>();
        share(order, spans, 0, new ArrayList<>(), found);
        return found;
    }

    private void share(List<Slab> order, List<Span> spans, int span, List<Slab> before, List<List<Slab>> found) {
        if (span == spans.size()) {
            if (order.isEmpty()) {
                found.add(before);
            }
            return;
        }
        for (int count = 0; count <= order.size(); count++) {
            List<Slab> here = order.subList(0, count);
            Span free = spans.get(span);
            long left = free.length() - needed(here, free);
            if (count > 0 && left < 0) {
                break;
            }
            for (int lean = count == 0 ? 1 : 0; lean < (count == 0 ? 2 : 3); lean++) {
                List<Slab> more = new ArrayList<>(before);
                more.addAll(spaced(here, free, left, lean));
                share(order.subList(count, order.size()), spans, span + 1, more, found);
            }
        }
    }

    /** Length that slabs take in a span with the least gaps. */
    private static long needed(List<Slab> slabs, Span span) {
        long need = 0;
        Slab last = span.before();
        for (Slab slab : slabs) {
            need += gap(last, slab) + (long) slab.length();
            last = slab;
        }
        return need + (slabs.isEmpty() ? 0 : gap(last, span.after()));
    }

    /** Some more than the least gaps between, and the rest of the free length behind (0), on both sides (1) or before (2). */
    private static List<Slab> spaced(List<Slab> slabs, Span span, long left, int lean) {
        List<Slab> placed = new ArrayList<>();
        if (slabs.isEmpty()) {
            return placed;
        }
        long extra = Math.min(MOST_EXTRA, left / (slabs.size() + 1));
        long rest = left - extra * (slabs.size() - 1);
        long at = span.from() + (lean == 0 ? 0 : lean == 1 ? rest / 2 : rest);
        Slab last = span.before();
        for (Slab slab : slabs) {
            at += gap(last, slab) + (placed.isEmpty() ? 0 : extra);
            placed.add(slab.movedTo(whole(at)));
            at += slab.length();
            last = slab;
        }
        return placed;
    }

    /** All of an order with what is fixed. */
    List<Slab> whole(List<Slab> placed) {
        List<Slab> all = new ArrayList<>(placed);
        all.addAll(fixed);
        return all;
    }

    /** Whether a slab may stand where it is among others, with the least gaps between all and to the ends. */
    boolean free(Slab slab, List<Slab> others) {
        return slab.x() >= gap(null, slab)
                && slab.x() + slab.length() <= deck - gap(slab, null)
                && others.stream()
                        .noneMatch(one ->
                                one.overlaps(slab.x() - gap(slab, one), slab.x() + slab.length() + gap(slab, one)));
    }

    /** Everything from the rear end on with the least gaps, though it does not fit, so that the ledger can say by how much. */
    List<Stand> crowded(List<Slab> free) {
        List<Stand> stands = new ArrayList<>(Slab.placed(fixed));
        long at = END;
        for (Slab slab : fixed) {
            at = Math.max(at, slab.x() + (long) slab.length() + GAP);
        }
        for (Slab slab : free) {
            stands.addAll(slab.movedTo(whole(Math.min(at, 190_000_000L))).placed());
            at += slab.length() + (long) GAP;
        }
        return stands;
    }

    /** Whole millimetres: nobody sets a vehicle down finer. */
    private static int whole(long micrometres) {
        return (int) (micrometres / 1000 * 1000);
    }
}
