package org.shelterwright.solver.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.solver.fit.distinct.Choice;
import org.shelterwright.solver.fit.kernel.Best;
import org.shelterwright.solver.fit.model.FitProblem;

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
        List<Best> bests =
                new LaneRace(problem, request.seed(), request.budget(), request.threads(), pulse, stop).run();
        List<FitOption> options = new Choice(checker).choose(found(problem, bests), request.alternatives());
        pulse.tell(true);
        return new FitResult(options, null, pulse.moves(), pulse.elapsed());
    }

    private static List<Choice.Found> found(FitProblem problem, List<Best> bests) {
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
