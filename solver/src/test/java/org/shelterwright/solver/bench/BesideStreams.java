package org.shelterwright.solver.bench;

import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.solver.bench.streams.StreamSearch;
import org.shelterwright.solver.fit.FitScore;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Spot;
import org.shelterwright.solver.fit.planted.PlantedFit;

/** The search beside constraint streams with the default local search, both on one thread. */
final class BesideStreams {
    static final List<PlantedCase> CASES = List.of(
            new PlantedCase(20, 0.10, false),
            new PlantedCase(40, 0.10, false),
            new PlantedCase(40, 0.05, false),
            new PlantedCase(60, 0.10, false));

    private static final Duration TIME = Duration.ofSeconds(30);

    private final Checker checker;
    private final Judge judge;
    private final Table table = new Table(
            "units",
            "free",
            "greedy start: hard / medium / soft (mm)",
            "streams after 30 s",
            "rows broken",
            "search as good after (s)",
            "as a share of 30 s");

    BesideStreams(Checker checker) {
        this.checker = checker;
        this.judge = new Judge(checker);
    }

    void run(PlantedCase one, long seed) {
        PlantedFit fit = one.fit(seed);
        FitProblem problem = FitProblem.of(checker.scene(fit.question()));
        @Nullable Spot[] start = Start.greedy(problem, seed);
        StreamSearch.Found found = new StreamSearch(problem).run(start, seed, TIME);
        Judge.Judgement theirs = judge.judge(found.layout());
        Reach.Run ours = new Reach(new StandardFitter(checker), 1).toReach(fit.question(), seed, TIME, theirs.score());
        table.add(
                one.units(),
                one.free(),
                levels(judge.judge(problem.layout(start)).score()),
                levels(theirs.score()),
                theirs.broken(),
                ours.goalSeconds(),
                ours.goalSeconds() / TIME.toSeconds());
    }

    private static String levels(FitScore score) {
        return Table.figure(score.hard() / 1e3) + " / " + Table.figure(score.medium() / 1e3) + " / "
                + Table.figure(score.soft() / 1e3);
    }

    String text() {
        return """
                ## Constraint streams with the planning engine's default local search

                The rules as constraint streams (Bavet), late acceptance with change and swap moves, 30 s, one thread. The
                search then runs on one thread until it is as good, level by level; it tells of its progress every 0.1 s.

                %s""".formatted(table.text());
    }
}
