package org.shelterwright.solver.bench.streams;

import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.solver.SolutionManager;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.solver.fit.FitScore;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Spot;

/** Searches with constraint streams and the default local search, from a start that is given. One thread. */
public final class StreamSearch {
    private final FitProblem problem;

    /**
     * What was found.
     *
     * @param score by the constraint streams themselves
     */
    public record Found(Layout layout, FitScore score) {}

    public StreamSearch(FitProblem problem) {
        this.problem = problem;
    }

    /**
     * Searches for a time.
     *
     * @param start a spot for each slot
     */
    public Found run(@Nullable Spot[] start, long seed, Duration time) {
        return run(start, seed, new TerminationConfig().withSpentLimit(time));
    }

    /** Searches until hard and medium limits hold, but no longer than a time. */
    public Found untilItHolds(@Nullable Spot[] start, long seed, Duration atMost) {
        String anySoft = HardMediumSoftLongScore.ofSoft(-Long.MAX_VALUE).toString();
        return run(start, seed, new TerminationConfig().withSpentLimit(atMost).withBestScoreLimit(anySoft));
    }

    private Found run(@Nullable Spot[] start, long seed, TerminationConfig termination) {
        SolverConfig config = config().withRandomSeed(seed)
                .withTerminationConfig(termination)
                .withPhases(new LocalSearchPhaseConfig());
        StreamPlan solved =
                SolverFactory.<StreamPlan>create(config).buildSolver().solve(new StreamPlan(problem, start));
        return new Found(problem.layout(solved.spots()), score(solved.getScore()));
    }

    /** The score of given spots by the constraint streams. */
    public FitScore score(@Nullable Spot[] spots) {
        SolverFactory<StreamPlan> factory = SolverFactory.create(config());
        return score(SolutionManager.<StreamPlan, HardMediumSoftLongScore>create(factory)
                .update(new StreamPlan(problem, spots)));
    }

    private static SolverConfig config() {
        return new SolverConfig()
                .withSolutionClass(StreamPlan.class)
                .withEntityClasses(StreamUnit.class)
                .withConstraintProviderClass(StreamRules.class);
    }

    private static FitScore score(@Nullable HardMediumSoftLongScore score) {
        if (score == null) {
            throw new IllegalStateException("The plan was not scored.");
        }
        return new FitScore(-score.hardScore(), -score.mediumScore(), -score.softScore());
    }
}
