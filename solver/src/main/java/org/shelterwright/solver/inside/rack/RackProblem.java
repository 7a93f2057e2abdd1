package org.shelterwright.solver.inside.rack;

import java.util.List;

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

    long cost(RackPiece piece, int bay, int lowest) {
        long[][] costs = piece.costs();
        long[] own = costs == null ? null : costs[bay];
        return own == null || lowest < 1 || lowest > own.length ? RackCost.NEVER : own[lowest - 1];
    }

    /** What an arrangement costs in all; {@link RackCost#NEVER} or more if it cannot be. Cost: linear. */
    long cost(List<Seat> seats) {
        boolean[][] taken = new boolean[bays.size()][];
        long[] grams = new long[bays.size()];
        for (int b = 0; b < taken.length; b++) {
            taken[b] = bays.get(b).blocked().clone();
        }
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
