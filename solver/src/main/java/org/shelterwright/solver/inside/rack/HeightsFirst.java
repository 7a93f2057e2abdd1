package org.shelterwright.solver.inside.rack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shelterwright.solver.inside.rack.RackProblem.Seat;

/**
 * Seats as many pieces as can be, exactly, by looking at heights only: pieces of one height that may go into the same bays are not told
 * apart, which leaves few choices even where there are many pieces. What each costs at its place is not looked at.
 */
final class HeightsFirst {
    private HeightsFirst() {}

    /** The seats; empty if there are too many choices even so. */
    static Optional<List<Seat>> seats(RackProblem problem) {
        Map<String, RackPiece> samples = new LinkedHashMap<>();
        List<RackPiece> pieces = new ArrayList<>();
        for (RackPiece piece : problem.pieces()) {
            long[][] costs = open(problem, piece);
            StringBuilder key = new StringBuilder().append(piece.units());
            for (long[] bay : costs) {
                key.append(bay == null ? '-' : '+');
            }
            RackPiece first = samples.computeIfAbsent(
                    key.toString(), any -> new RackPiece(piece.id(), samples.size(), piece.units(), 0, costs));
            pieces.add(new RackPiece(piece.id(), first.kind(), first.units(), 0, first.costs()));
        }
        List<RackBayRoom> bays = problem.bays().stream()
                .map(bay -> new RackBayRoom(bay.unit(), bay.bay(), bay.units(), bay.blocked(), Long.MAX_VALUE / 2, 0))
                .toList();
        return ExactRacks.of(new RackProblem(pieces, bays)).map(ExactRacks::seats);
    }

    private static long[][] open(RackProblem problem, RackPiece piece) {
        long[][] costs = new long[problem.bays().size()][];
        for (int b = 0; b < costs.length; b++) {
            int places = problem.bays().get(b).units() - piece.units() + 1;
            boolean may = places > 0;
            for (int u = 1; may && u <= places; u++) {
                may = problem.cost(piece, b, u) < RackCost.NEVER;
            }
            costs[b] = may ? new long[places] : null;
        }
        return costs;
    }
}
