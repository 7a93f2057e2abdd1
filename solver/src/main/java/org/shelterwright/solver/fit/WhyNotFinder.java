package org.shelterwright.solver.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.solver.fit.kernel.Best;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.MomentLimits;
import org.shelterwright.solver.fit.whynot.Proofs;
import org.shelterwright.solver.fit.whynot.Relaxing;

/** Explains a search that found no layout that holds every limit. */
final class WhyNotFinder {
    /** Share of the moves of the search that one try with a limit left out may take. */
    private static final int TRY_SHARE = 8;

    private static final int MOST_FINDINGS = 5;

    private static final long MOST_TRY_MOVES = 400_000;

    private final Checker checker;
    private final FitProblem problem;
    private final MomentLimits limits;

    WhyNotFinder(Checker checker, FitProblem problem, MomentLimits limits) {
        this.checker = checker;
        this.problem = problem;
        this.limits = limits;
    }

    /** The reasons; {@code null} if the best option breaks nothing. */
    @Nullable
    WhyNot explain(FitRequest request, List<FitOption> options, StopSignal stop) {
        FitOption best = options.get(0);
        if (best.ledger().count(Verdict.BROKEN) == 0) {
            return null;
        }
        List<String> proofs = Proofs.of(problem, checker, best.layout());
        if (!proofs.isEmpty()) {
            return new WhyNot(true, proofs, List.of());
        }
        List<Ledger> known = options.stream().map(FitOption::ledger).toList();
        Ledger fewest = Relaxing.fewest(known, relaxed -> attempt(request, relaxed, best, stop));
        return new WhyNot(false, found(best.ledger()), Relaxing.sentences(fewest));
    }

    private static List<String> found(Ledger best) {
        List<String> findings = best.rows().stream()
                .filter(row -> row.verdict() == Verdict.BROKEN)
                .map(Row::finding)
                .toList();
        List<String> reasons = new ArrayList<>(findings.subList(0, Math.min(MOST_FINDINGS, findings.size())));
        int more = findings.size() - reasons.size();
        reasons.add((more == 0 ? "" : Wording.count(more, "more row") + (more == 1 ? " is" : " are") + " broken. ")
                + "This was found by trying, not proven: a longer search may find a layout that holds.");
        return reasons;
    }

    private Ledger attempt(FitRequest request, Set<String> relaxed, FitOption best, StopSignal stop) {
        if (stop.stopped()) {
            return best.ledger();
        }
        Long moves = request.budget().moves();
        long tries = moves == null ? MOST_TRY_MOVES : Math.max(1, Math.min(MOST_TRY_MOVES, moves / TRY_SHARE));
        Budget budget = new Budget(tries, request.budget().time());
        FitProblem easier = problem.relaxed(relaxed);
        List<Best> bests = new LaneRace(
                        easier,
                        limits.without(relaxed),
                        request.seed(),
                        budget,
                        request.threads(),
                        new Pulse(progress -> {}),
                        stop)
                .run();
        try (Crew crew = new Crew(request.threads())) {
            Choice choice = new Choice(checker, layout -> layout, crew);
            List<FitOption> found = choice.checked(StandardFitter.found(easier, bests));
            return found.isEmpty() ? best.ledger() : found.get(0).ledger();
        }
    }
}
