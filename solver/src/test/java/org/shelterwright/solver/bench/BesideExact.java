package org.shelterwright.solver.bench;

import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.solver.bench.exact.ExactSearch;
import org.shelterwright.solver.fit.FitOption;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.planted.PlantedFit;

/** The search beside a general exact solver, both with two threads. */
final class BesideExact {
    static final List<PlantedCase> CASES = List.of(
            new PlantedCase(20, 0.10, false),
            new PlantedCase(20, 0.10, true),
            new PlantedCase(40, 0.10, true),
            new PlantedCase(60, 0.10, false));

    private static final Duration TIME = Duration.ofSeconds(60);
    private static final int WORKERS = 2;

    private final Checker checker;
    private final Judge judge;
    private final Table table = new Table(
            "units",
            "free",
            "wishes",
            "CP-SAT: first fit (s)",
            "soft after 60 s (mm)",
            "proven best",
            "search: first fit (s)",
            "ended after (s)",
            "soft (mm)",
            "search / CP-SAT",
            "known solution (mm)");

    BesideExact(Checker checker) {
        this.checker = checker;
        this.judge = new Judge(checker);
    }

    void run(PlantedCase one, long seed) {
        PlantedFit fit = one.fit(seed);
        FitProblem problem = FitProblem.of(checker.scene(fit.question()));
        ExactSearch.Found found = new ExactSearch(problem).run(Start.greedy(problem, seed), seed, TIME, WORKERS);
        Reach.Run ours = new Reach(new StandardFitter(checker), WORKERS).toTheEnd(fit.question(), seed, TIME);
        FitOption best = ours.best();
        double theirSoft = soft(found.layout());
        double ourSoft = soft(best == null ? null : best.layout());
        Double first = found.firstSeconds();
        table.add(
                one.units(),
                one.free(),
                one.wishes(),
                first == null ? "none" : Table.figure(first),
                theirSoft,
                found.proven() ? "yes" : "no",
                ours.goalSeconds(),
                ours.seconds(),
                ourSoft,
                ourSoft / theirSoft,
                soft(fit.solution()));
    }

    /** Soft level (mm) of a layout that holds; {@code NaN} of one that does not. */
    private double soft(@Nullable Layout layout) {
        if (layout == null) {
            return Double.NaN;
        }
        Judge.Judgement judged = judge.judge(layout);
        boolean holds =
                judged.holds() && judged.score().hard() == 0 && judged.score().medium() == 0;
        return holds ? judged.score().soft() / 1e3 : Double.NaN;
    }

    String text() {
        return """
                ## CP-SAT

                The rules as literals for the sides on which cuboids lie of each other and a no-overlap constraint on the
                floor, hard and medium limits as constraints, the soft level as linear objective; two workers, 60 s. It looks
                for a first fit without the objective, with the greedy start as a hint, because it finds it far sooner so, and
                goes on from there. "Proven best" is meant for its own objective, in which masses are rounded to 100 g and
                distances in space are taken from below. The search runs on two threads for at most 60 s and ends earlier if
                several rounds bring nothing more.

                %s""".formatted(table.text());
    }
}
