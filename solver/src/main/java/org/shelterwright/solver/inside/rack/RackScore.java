package org.shelterwright.solver.inside.rack;

import java.util.List;
import org.optaplanner.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import org.optaplanner.core.api.score.calculator.EasyScoreCalculator;
import org.shelterwright.solver.inside.rack.RackProblem.Seat;

/** The score of a plan: shared and forbidden units first, then the cost of the arrangement. */
public class RackScore implements EasyScoreCalculator<RackPlan, HardSoftLongScore> {
    @Override
    public HardSoftLongScore calculateScore(RackPlan plan) {
        RackProblem problem = plan.problem();
        List<RackBayRoom> bays = problem.bays();
        int[][] taken = new int[bays.size()][];
        long[] grams = new long[bays.size()];
        for (int b = 0; b < taken.length; b++) {
            taken[b] = new int[bays.get(b).units()];
            for (int u = 0; u < taken[b].length; u++) {
                taken[b][u] = bays.get(b).blocked()[u] ? 1 : 0;
            }
        }
        long wrong = 0;
        long cost = 0;
        for (RackStand stand : plan.getStands()) {
            Seat seat = stand.getSeat();
            RackPiece piece = problem.pieces().get(stand.getIndex());
            if (seat == null || seat.bay() < 0) {
                cost += RackCost.LEFT_OUT;
                continue;
            }
            long own = problem.cost(piece, seat.bay(), seat.lowest());
            if (own >= RackCost.NEVER) {
                wrong += piece.units();
                continue;
            }
            cost += own;
            grams[seat.bay()] += piece.grams();
            for (int u = seat.lowest() - 1; u < seat.lowest() - 1 + piece.units(); u++) {
                wrong += taken[seat.bay()][u];
                taken[seat.bay()][u]++;
            }
        }
        for (int b = 0; b < taken.length; b++) {
            for (int one : taken[b]) {
                cost += one > 0 ? 0 : bays.get(b).openCost();
            }
            cost += bays.get(b).overload(grams[b]);
        }
        return HardSoftLongScore.of(-wrong, -cost);
    }
}
