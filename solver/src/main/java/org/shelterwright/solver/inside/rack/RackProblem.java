package org.shelterwright.solver.inside.rack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Pieces and the bays that they may go into.
 *
 * @param pieces in the order of the brief
 */
record RackProblem(List<RackPiece> pieces, List<RackBayRoom> bays) {
    RackProblem {
        pieces = List.copyOf(pieces);
        bays = List.copyOf(bays);
    }

    /** Where a piece sits: a bay, by number, and its lowest unit from 1; a bay below zero: nowhere. */
    record Seat(int bay, int lowest) {
        static final Seat NONE = new Seat(-1, 0);
    }

    /** Whether the answer to another problem is the answer to this one too. Cost: linear in the costs. */
    boolean asksTheSameAs(RackProblem other) {
        boolean same = pieces.size() == other.pieces.size() && bays.size() == other.bays.size();
        for (int i = 0; same && i < pieces.size(); i++) {
            same = pieces.get(i).asksAsMuch(other.pieces.get(i));
        }
        for (int b = 0; same && b < bays.size(); b++) {
            same = bays.get(b).offersAsMuch(other.bays.get(b));
        }
        return same;
    }

    long cost(RackPiece piece, int bay, int lowest) {
        long[][] costs = piece.costs();
        long[] own = costs == null ? null : costs[bay];
        return own == null || lowest < 1 || lowest > own.length ? RackCost.NEVER : own[lowest - 1];
    }

    /** By bay and unit less one: whether it is blocked or a piece sits there. */
    boolean[][] taken(List<Seat> seats) {
        boolean[][] taken = new boolean[bays.size()][];
        for (int b = 0; b < taken.length; b++) {
            taken[b] = bays.get(b).blocked().clone();
        }
        for (int i = 0; i < seats.size(); i++) {
            Seat seat = seats.get(i);
            if (seat.bay() >= 0) {
                int from = seat.lowest() - 1;
                Arrays.fill(taken[seat.bay()], from, from + pieces.get(i).units(), true);
            }
        }
        return taken;
    }

    /**
     * The problem of some pieces in some bays while others stay: what it costs more or less is what the whole does.
     *
     * @param staying seats by piece; none for those that are asked for
     * @param some the pieces, by number
     * @param into the bays, by number
     */
    RackProblem part(List<Seat> staying, List<Integer> some, List<Integer> into) {
        boolean[][] taken = taken(staying);
        long[] grams = new long[bays.size()];
        for (int i = 0; i < staying.size(); i++) {
            if (staying.get(i).bay() >= 0) {
                grams[staying.get(i).bay()] += pieces.get(i).grams();
            }
        }
        List<RackBayRoom> rooms = new ArrayList<>();
        for (int b : into) {
            RackBayRoom bay = bays.get(b);
            rooms.add(new RackBayRoom(
                    bay.unit(), bay.bay(), bay.units(), taken[b], bay.roomGrams() - grams[b], bay.openCost()));
        }
        Map<Integer, Integer> kinds = new HashMap<>();
        List<RackPiece> parts = new ArrayList<>();
        for (int i : some) {
            RackPiece piece = pieces.get(i);
            Integer kind = kinds.computeIfAbsent(piece.kind(), any -> kinds.size());
            long[][] own = piece.costs();
            long[][] costs = new long[into.size()][];
            for (int b = 0; b < costs.length; b++) {
                costs[b] = own == null ? null : own[into.get(b)];
            }
            parts.add(new RackPiece(piece.id(), kind, piece.units(), piece.grams(), costs));
        }
        return new RackProblem(parts, rooms);
    }

    /** What an arrangement costs in all; {@link RackCost#NEVER} or more if it cannot be. Cost: linear. */
    long cost(List<Seat> seats) {
        boolean[][] taken = taken(List.of());
        long[] grams = new long[bays.size()];
        long sum = 0;
        for (int i = 0; i < pieces.size(); i++) {
            Seat seat = seats.get(i);
            RackPiece piece = pieces.get(i);
            if (seat.bay() < 0) {
                sum += RackCost.LEFT_OUT;
                continue;
            }
            long own = cost(piece, seat.bay(), seat.lowest());
            if (own >= RackCost.NEVER) {
                return RackCost.NEVER;
            }
            sum += own;
            grams[seat.bay()] += piece.grams();
            for (int u = seat.lowest() - 1; u < seat.lowest() - 1 + piece.units(); u++) {
                if (u >= taken[seat.bay()].length || taken[seat.bay()][u]) {
                    return RackCost.NEVER;
                }
                taken[seat.bay()][u] = true;
            }
        }
        for (int b = 0; b < taken.length; b++) {
            for (boolean one : taken[b]) {
                sum += one ? 0 : bays.get(b).openCost();
            }
            sum += bays.get(b).overload(grams[b]);
        }
        return sum;
    }
}
