package org.shelterwright.solver.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.solver.fit.distinct.Choice;
import org.shelterwright.solver.fit.kernel.Best;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.MomentLimits;

/**
 * Finds places by greedy construction, annealing and local search in several independent lanes, and offers only layouts
 * that were checked from scratch. Safe for several threads.
 */
public final class StandardFitter implements Fitter {
    private final Checker checker;

    public StandardFitter(Checker checker) {
        this.checker = checker;
    }

    @Override
    public FitResult fit(FitRequest request, FitObserver observer, StopSignal stop) {
        Pulse pulse = new Pulse(observer);
        FitProblem problem = FitProblem.of(checker.scene(request.start()));
        MomentLimits limits = new MomentLimits(checker.book());
        LaneRace race =
                new LaneRace(problem, limits, request.seed(), request.budget(), request.threads(), pulse, stop);
        List<Best> bests = race.run();
        List<FitOption> options = new Choice(checker).choose(found(problem, bests), request.alternatives());
        pulse.tell(true);
        WhyNot whyNot = new WhyNotFinder(checker, problem, limits).explain(request, options, stop);
        return new FitResult(options, whyNot, pulse.moves(), pulse.elapsed());
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
