package org.shelterwright.solver.bench;

import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.solver.bench.exact.ExactSearch;
import org.shelterwright.solver.bench.streams.StreamSearch;
import org.shelterwright.solver.fit.FitOption;
import org.shelterwright.solver.fit.FitScore;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Spot;
import org.shelterwright.solver.fit.planted.PlantedFit;

/** The search beside two other ways to search the same planted fits, in one run and judged alike. */
final class BaselineRuns {
    private static final Duration STREAMS_TIME = Duration.ofSeconds(30);
    private static final Duration EXACT_TIME = Duration.ofSeconds(60);
    private static final int EXACT_WORKERS = 2;
    private static final List<Case> CASES =
            List.of(new Case(12, 0.20), new Case(20, 0.10), new Case(40, 0.10), new Case(60, 0.10));

    private final Setting setting;
    private final Checker checker = Checker.standard();
    private final Judge judge = new Judge(checker);
    private final Table streams = new Table(
            "units",
            "free",
            "streams after 30 s: hard / medium / soft (mm)",
            "rows broken",
            "search as good after (s)",
            "as a share of 30 s");
    private final Table exact = new Table(
            "units",
            "free",
            "CP-SAT: first fit (s)",
            "soft after 60 s (mm)",
            "proven best",
            "search: first fit (s)",
            "ended after (s)",
            "soft (mm)",
            "search / CP-SAT",
            "known solution (mm)");

    /** Size and slack of a fit. */
    private record Case(int units, double slack) {}

    BaselineRuns(Setting setting) {
        this.setting = setting;
    }

    String run() {
        Machine machine = new Machine();
        new Reach(new StandardFitter(checker), 2)
                .toReach(PlantedFit.of(99, 20, 0.2).question(), 99, Duration.ofSeconds(5), Reach.ALL_MET);
        long end = setting.endNanos();
        for (Case one : CASES) {
            if (System.nanoTime() < end) {
                run(one);
            }
        }
        return text(machine);
    }

    private void run(Case one) {
        long seed = setting.seed();
        PlantedFit fit =
                PlantedFit.of(seed, one.units(), one.slack()).withWishes().withoutWalkways();
        FitProblem problem = FitProblem.of(checker.scene(fit.question()));
        @Nullable Spot[] start = Start.greedy(problem, seed);
        String free = Math.round(100 * one.slack()) + " %";

        StreamSearch.Found theirs = new StreamSearch(problem).run(start, seed, STREAMS_TIME);
        Judge.Judgement judged = judge.judge(theirs.layout());
        Reach.Run ours =
                new Reach(new StandardFitter(checker), 1).toReach(fit.question(), seed, STREAMS_TIME, judged.score());
        streams.add(
                one.units(),
                free,
                levels(judged.score()),
                judged.broken(),
                ours.goalSeconds(),
                ours.goalSeconds() / STREAMS_TIME.toSeconds());

        ExactSearch.Found found = new ExactSearch(problem).run(start, seed, EXACT_TIME, EXACT_WORKERS);
        Reach.Run whole =
                new Reach(new StandardFitter(checker), EXACT_WORKERS).toTheEnd(fit.question(), seed, EXACT_TIME);
        double theirSoft = soft(found.layout() == null ? null : judge.judge(found.layout()));
        FitOption best = whole.best();
        double ourSoft = soft(best == null ? null : judge.judge(best.layout()));
        exact.add(
                one.units(),
                free,
                found.firstSeconds() == null ? "none" : Table.figure(found.firstSeconds()),
                theirSoft,
                found.proven() ? "yes" : "no",
                whole.goalSeconds(),
                whole.seconds(),
                ourSoft,
                ourSoft / theirSoft,
                soft(judge.judge(fit.solution())));
    }

    /** Soft level (mm) of a layout that holds; {@code NaN} of one that does not. */
    private static double soft(Judge.@Nullable Judgement judgement) {
        boolean holds = judgement != null
                && judgement.holds()
                && judgement.score().hard() == 0
                && judgement.score().medium() == 0;
        return holds ? judgement.score().soft() / 1e3 : Double.NaN;
    }

    private static String levels(FitScore score) {
        return Table.figure(score.hard() / 1e3) + " / " + Table.figure(score.medium() / 1e3) + " / "
                + Table.figure(score.soft() / 1e3);
    }

    private String text(Machine machine) {
        return """
                # The search beside other ways to search

                The same planted fits (see planted.md) with wishes that the known solution keeps: every fourth unit shall face
                as it does there, every fourth shall be near another, and units that touch the rear wall shall stand at it. No
                walkway is asked for. All ways start from the same greedy construction, since the planning engine's own
                construction tries every place of every unit, which are tens of thousands; all choose from the same anchors
                (on walls the others from a grid of 25 mm); all results are judged by the full ledger and by one score
                function, from scratch: hard is overlap and bolts without a hole of their own, medium is clear zones, soft is
                the centre of mass off the middle and high, and wishes not kept.

                %s
                Seed %d. Date: %s.

                ## Constraint streams with the planning engine's default local search

                The rules as constraint streams (Bavet), late acceptance with change and swap moves, 30 s, one thread. The
                search then runs on one thread until it is as good, at every level; it tells of its progress every 0.1 s.

                %s
                ## CP-SAT

                The rules as literals for the sides on which cuboids lie of each other and a no-overlap constraint on the
                floor, hard and medium limits as constraints, the soft level as linear objective, the greedy start as hint;
                two workers, 60 s. The search runs on two threads for at most 60 s.

                %s""".formatted(machine.text(), setting.seed(), setting.date(), streams.text(), exact.text());
    }
}
