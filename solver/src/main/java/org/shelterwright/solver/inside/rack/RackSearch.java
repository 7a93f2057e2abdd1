package org.shelterwright.solver.inside.rack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import org.optaplanner.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.monitoring.MonitoringConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;
import org.shelterwright.solver.inside.rack.RackProblem.Seat;

/**
 * Arranges pieces where there are too many choices for the exact way: it starts from the cheaper of two arrangements, one greedy
 * from below with the heaviest first, one that seats as many as can be by their heights; goes on with local search with late
 * acceptance; and then seats a few pieces at a time anew, exactly. The same seed and moves give the same arrangement.
 */
final class RackSearch {
    private static final int LATE_ACCEPTANCE = 100;
    private static final long MOVES_A_ROUND = 10;

    private final RackProblem problem;

    RackSearch(RackProblem problem) {
        this.problem = problem;
    }

    /** @param moves moves that it may try; one in {@value #MOVES_A_ROUND} of them seats several pieces anew */
    List<Seat> seats(long seed, long moves) {
        List<Seat> greedy = greedy();
        List<Seat> start = HeightsFirst.seats(problem)
                .filter(seats -> problem.cost(seats) < problem.cost(greedy))
                .orElse(greedy);
        return new Resettling(problem, seed).better(walked(start, seed, moves), moves / MOVES_A_ROUND);
    }

    private List<Seat> walked(List<Seat> start, long seed, long moves) {
        SolverConfig config = new SolverConfig()
                .withSolutionClass(RackPlan.class)
                .withEntityClasses(RackStand.class)
                .withRandomSeed(seed)
                .withMonitoringConfig(new MonitoringConfig().withSolverMetricList(List.of()))
                .withScoreDirectorFactory(
                        new ScoreDirectorFactoryConfig().withEasyScoreCalculatorClass(RackScore.class))
                .withPhases(new LocalSearchPhaseConfig()
                        .withAcceptorConfig(new LocalSearchAcceptorConfig().withLateAcceptanceSize(LATE_ACCEPTANCE))
                        .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1))
                        .withTerminationConfig(new TerminationConfig().withScoreCalculationCountLimit(moves)));
        RackPlan solved = SolverFactory.<RackPlan>create(config).buildSolver().solve(new RackPlan(problem, start));
        List<Seat> found = solved.seats();
        return problem.cost(found) < problem.cost(start) ? found : start;
    }

    /** The heaviest first, each at the cheapest free place. */
    List<Seat> greedy() {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < problem.pieces().size(); i++) {
            order.add(i);
        }
        order.sort(
                Comparator.comparingLong((Integer i) -> -problem.pieces().get(i).grams())
                        .thenComparingInt(i -> i));
        boolean[][] taken = problem.taken(List.of());
        Seat[] seats = new Seat[problem.pieces().size()];
        for (int i : order) {
            RackPiece piece = problem.pieces().get(i);
            seats[i] = cheapest(problem, piece, taken);
            if (seats[i].bay() >= 0) {
                int from = seats[i].lowest() - 1;
                Arrays.fill(taken[seats[i].bay()], from, from + piece.units(), true);
            }
        }
        return List.of(seats);
    }

    /** The cheapest free place of a piece; none if there is none. */
    static Seat cheapest(RackProblem problem, RackPiece piece, boolean[][] taken) {
        Seat best = Seat.NONE;
        long least = RackCost.NEVER;
        for (int b = 0; b < taken.length; b++) {
            for (int lowest = 1; lowest + piece.units() - 1 <= taken[b].length; lowest++) {
                long cost = problem.cost(piece, b, lowest);
                if (cost < least && free(taken[b], lowest - 1, piece.units())) {
                    least = cost;
                    best = new Seat(b, lowest);
                }
            }
        }
        return best;
    }

    private static boolean free(boolean[] taken, int from, int count) {
        for (int u = from; u < from + count; u++) {
            if (taken[u]) {
                return false;
            }
        }
        return true;
    }
}
