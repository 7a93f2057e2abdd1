package org.shelterwright.solver.fit.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import org.optaplanner.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import org.optaplanner.core.config.phase.custom.CustomPhaseConfig;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.monitoring.MonitoringConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;
import org.shelterwright.solver.fit.kernel.Best;
import org.shelterwright.solver.fit.kernel.Construction;
import org.shelterwright.solver.fit.kernel.Dice;
import org.shelterwright.solver.fit.kernel.Meter;
import org.shelterwright.solver.fit.kernel.Planes;
import org.shelterwright.solver.fit.kernel.State;
import org.shelterwright.solver.fit.model.Amounts;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.MomentLimits;

/** One seeded search from start to end on one thread. What it finds depends on problem, seed, number and moves alone. */
public final class Lane {
    private static final int LATE_ACCEPTANCE = 200;
    private static final int POLISH_SHARE = 20;
    private static final int ROUNDS = 9;

    private final Solver<FitPlan> solver;
    private final LaneDesk desk;
    private volatile boolean ended;

    /**
     * Prepares a lane.
     *
     * @param limits the limits that depend on moments of mass
     * @param moves moves that it may try in all
     * @param asked whether someone asks to end; read often
     * @param improved hears of each new best score of this lane
     */
    public Lane(
            FitProblem problem,
            MomentLimits limits,
            int number,
            long seed,
            long moves,
            BooleanSupplier asked,
            Consumer<Amounts> improved) {
        long polish = Math.max(1, Math.min(200_000, moves / POLISH_SHARE));
        Meter meter = new Meter(Math.max(1, moves - polish), () -> ended || asked.getAsBoolean());
        this.desk = new LaneDesk(problem, number, Dice.of(seed, number), meter, new Planes(limits), improved);
        this.solver = SolverFactory.<FitPlan>create(config(seed, round(moves, problem), polish))
                .buildSolver();
    }

    private static long round(long moves, FitProblem problem) {
        return Math.max(20_000, Math.min(moves / ROUNDS, 5_000L * problem.size()));
    }

    private static SolverConfig config(long seed, long roundMoves, long polish) {
        return new SolverConfig()
                .withSolutionClass(FitPlan.class)
                .withEntityClasses(Stand.class)
                .withRandomSeed(seed)
                .withMonitoringConfig(new MonitoringConfig().withSolverMetricList(List.of()))
                .withScoreDirectorFactory(
                        new ScoreDirectorFactoryConfig().withIncrementalScoreCalculatorClass(PlanScore.class))
                .withPhases(
                        new CustomPhaseConfig().withCustomPhaseCommands(new GreedyPhase()),
                        new CustomPhaseConfig().withCustomPhaseCommands(new AnnealPhase(roundMoves)),
                        new LocalSearchPhaseConfig()
                                .withMoveSelectorConfig(
                                        new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(PlaceMoves.class))
                                .withAcceptorConfig(
                                        new LocalSearchAcceptorConfig().withLateAcceptanceSize(LATE_ACCEPTANCE))
                                .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1))
                                .withTerminationConfig(new TerminationConfig().withScoreCalculationCountLimit(polish)));
    }

    /**
     * Searches; may be called once.
     *
     * @return the best after the polish first, then the best of each round of annealing in order
     */
    public List<Best> run() {
        FitPlan solved = solver.solve(new FitPlan(desk));
        State state = new State(desk.problem());
        state.restore(solved.spots());
        if (state.isEmpty()) {
            // Asked to end before the first phase: what stands, and what greed adds, is still better than nothing.
            state.restore(desk.problem().start());
            new Construction(state, desk.dice()).placeAll(0);
        }
        desk.planes().touch(state);
        state.walk();
        Best polished = new Best();
        polished.offer(state);
        List<Best> all = new ArrayList<>();
        all.add(polished);
        all.addAll(desk.found());
        return all;
    }

    /** Ends the search soon; the best so far is kept. Safe for several threads. */
    public void end() {
        ended = true;
        solver.terminateEarly();
    }

    /** Moves tried so far in annealing. */
    public long moves() {
        return desk.meter().used();
    }
}
