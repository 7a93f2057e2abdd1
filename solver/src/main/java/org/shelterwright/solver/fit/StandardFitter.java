package org.shelterwright.solver.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.solver.fit.kernel.Best;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.MomentLimits;
import org.shelterwright.solver.fit.repair.LedgerRepair;
import org.shelterwright.solver.inside.Stower;

/**
 * Finds places by greedy construction, annealing and local search in several independent lanes, and offers only layouts
 * that were checked from scratch. Safe for several threads.
 */
public final class StandardFitter implements Fitter {
    /** More broken rows than this are not mended one by one. */
    private static final int MOST_TO_MEND = 12;

    /** How often the live ledger is asked to mend one layout. */
    private static final int ASKINGS = 400;

    /** How many of the best by their own score are mended, beside the best by its ledger. */
    private static final int MOST_STARTS = 2;

    private final Checker checker;
    private final boolean reasoned;

    public StandardFitter(Checker checker) {
        this(checker, true);
    }

    private StandardFitter(Checker checker, boolean reasoned) {
        this.checker = checker;
        this.reasoned = reasoned;
    }

    @Override
    public Fitter withoutReasons() {
        return new StandardFitter(checker, false);
    }

    @Override
    public FitResult fit(FitRequest asked, FitObserver observer, StopSignal stop) {
        Stower stower = new Stower(checker);
        FitRequest stowed = asked.from(stower.arranged(asked.start().withBoltDown(null), asked.seed()));
        try (Crew crew = new Crew(asked.threads())) {
            Choice choice = new Choice(checker, layout -> stower.arranged(layout, asked.seed()), crew);
            Finishing finishing = new Finishing(checker, asked.start().boltDown(), crew);
            return fit(stowed, choice, finishing, observer, stop);
        }
    }

    private FitResult fit(
            FitRequest request, Choice choice, Finishing finishing, FitObserver observer, StopSignal stop) {
        Pulse pulse = new Pulse(observer);
        FitProblem problem = FitProblem.of(checker.scene(Finishing.bare(request.start())));
        MomentLimits limits = new MomentLimits(checker.book());
        LaneRace race = new LaneRace(problem, limits, request.seed(), request.budget(), request.threads(), pulse, stop);
        List<Best> bests = race.run();
        List<Choice.Found> found = found(problem, bests);
        List<FitOption> checked = choice.checked(found);
        if (worthMending(checked)) {
            checked = choice.checked(mended(problem, checked, found, request, stop));
        }
        List<FitOption> options = finishing.of(checked, request.alternatives(), stop);
        pulse.tell(true);
        WhyNot whyNot = reasoned ? new WhyNotFinder(checker, problem, limits).explain(request, options, stop) : null;
        return new FitResult(options, whyNot, pulse.moves(), pulse.elapsed());
    }

    /** Few broken rows may be such as the search does not see. */
    private static boolean worthMending(List<FitOption> options) {
        long broken = options.get(0).ledger().count(Verdict.BROKEN);
        return broken > 0 && broken <= MOST_TO_MEND;
    }

    private List<Choice.Found> mended(
            FitProblem problem,
            List<FitOption> options,
            List<Choice.Found> found,
            FitRequest request,
            StopSignal stop) {
        List<Choice.Found> all = new ArrayList<>();
        List<Choice.Found> starts = new ArrayList<>();
        starts.add(
                new Choice.Found(options.get(0).layout(), options.get(0).score().soft()));
        starts.addAll(found.subList(0, Math.min(MOST_STARTS, found.size())));
        for (Choice.Found start : starts) {
            LedgerRepair repair = new LedgerRepair(checker, problem, start.layout(), request.seed());
            all.add(new Choice.Found(repair.mend(ASKINGS, stop::stopped), start.soft()));
            if (repair.mended()) {
                break;
            }
        }
        all.addAll(found);
        return all;
    }

    /** The layouts of what lanes found, the best by their own score first. */
    static List<Choice.Found> found(FitProblem problem, List<Best> bests) {
        List<Best> ordered = new ArrayList<>(bests);
        ordered.sort(Comparator.comparing(Best::score, Comparator.nullsLast(Comparator.naturalOrder())));
        List<Choice.Found> found = new ArrayList<>();
        for (Best best : ordered) {
            var spots = best.spots();
            var score = best.score();
            if (spots != null && score != null) {
                found.add(new Choice.Found(problem.layout(spots), score.soft()));
            }
        }
        return found;
    }
}
