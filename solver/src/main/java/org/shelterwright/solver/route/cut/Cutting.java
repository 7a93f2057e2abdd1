package org.shelterwright.solver.route.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Pieces of one kind of cable cut from drums of one length.
 *
 * @param drums pieces of each drum, the longest first
 * @param bound no cutting needs fewer drums
 * @param tooLong pieces longer than a drum, which must be ordered by themselves
 */
public record Cutting(List<List<Piece>> drums, int bound, List<Piece> tooLong) {
    private static final int NODES = 50_000;

    public Cutting {
        drums = drums.stream().map(List::copyOf).toList();
        tooLong = List.copyOf(tooLong);
    }

    /**
     * A piece to cut.
     *
     * @param wire id of its wire
     * @param length (µm)
     */
    public record Piece(String wire, long length) {}

    /**
     * Cuts: each piece, the longest first, from the first drum that still has it; then, while more drums are in use than the
     * bound asks for, a search with a budget of nodes tries with one less. Literature: Johnson (1973); Martello and Toth (1990)
     * for the bound.
     *
     * @param drum length of a drum (µm)
     */
    public static Cutting of(List<Piece> pieces, long drum) {
        List<Piece> order = pieces.stream()
                .filter(piece -> piece.length() <= drum)
                .sorted(Comparator.comparing((Piece piece) -> -piece.length()).thenComparing(Piece::wire))
                .toList();
        int bound = bound(order, drum);
        List<List<Piece>> best = firstFit(order, drum);
        while (best.size() > bound) {
            Fewer fewer = new Fewer(order, drum, best.size() - 1);
            if (!fewer.place(0)) {
                break;
            }
            best = fewer.bins;
        }
        return new Cutting(
                best,
                bound,
                pieces.stream().filter(piece -> piece.length() > drum).toList());
    }

    private static List<List<Piece>> firstFit(List<Piece> order, long drum) {
        List<List<Piece>> bins = new ArrayList<>();
        for (Piece piece : order) {
            List<Piece> into = bins.stream()
                    .filter(bin -> sum(bin) + piece.length() <= drum)
                    .findFirst()
                    .orElse(null);
            if (into == null) {
                into = new ArrayList<>();
                bins.add(into);
            }
            into.add(piece);
        }
        return bins;
    }

    /**
     * The greatest of the bounds L2: for each k, pieces longer than drum − k have a drum each, those longer than half too, and
     * what pieces of at least k do not find beside the latter asks for more.
     */
    private static int bound(List<Piece> order, long drum) {
        long best = 0;
        for (Piece one : order) {
            long k = one.length() <= drum / 2 ? one.length() : 0;
            best = Math.max(best, bound(order, drum, k));
        }
        return (int) Math.max(best, bound(order, drum, 0));
    }

    private static long bound(List<Piece> order, long drum, long k) {
        long alone = 0;
        long half = 0;
        long halfSum = 0;
        long small = 0;
        for (Piece piece : order) {
            if (piece.length() > drum - k) {
                alone++;
            } else if (2 * piece.length() > drum) {
                half++;
                halfSum += piece.length();
            } else if (piece.length() >= k) {
                small += piece.length();
            }
        }
        long over = small - (half * drum - halfSum);
        return alone + half + Math.max(0, (over + drum - 1) / drum);
    }

    /** Length of some pieces together (µm). */
    public static long sum(List<Piece> bin) {
        return bin.stream().mapToLong(Piece::length).sum();
    }

    /** Depth-first search for a cutting into a set number of drums. */
    private static final class Fewer {
        private final List<Piece> order;
        private final long drum;
        private final List<List<Piece>> bins = new ArrayList<>();
        private int left = NODES;

        Fewer(List<Piece> order, long drum, int count) {
            this.order = order;
            this.drum = drum;
            for (int i = 0; i < count; i++) {
                bins.add(new ArrayList<>());
            }
        }

        boolean place(int index) {
            if (index == order.size()) {
                return true;
            }
            if (left-- <= 0) {
                return false;
            }
            boolean empty = false;
            for (List<Piece> bin : bins) {
                boolean fits = sum(bin) + order.get(index).length() <= drum;
                if (fits && !(bin.isEmpty() && empty)) {
                    empty |= bin.isEmpty();
                    bin.add(order.get(index));
                    if (place(index + 1)) {
                        return true;
                    }
                    bin.remove(bin.size() - 1);
                }
            }
            return false;
        }
    }
}
