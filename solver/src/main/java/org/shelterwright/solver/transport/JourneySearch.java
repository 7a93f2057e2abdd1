package org.shelterwright.solver.transport;

import java.util.function.Consumer;
import org.shelterwright.layouts.check.JourneyChecker;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.load.Loader;

/**
 * Plans a journey again and again, each time with the next seed, and keeps the plan whose ledger is best, the earliest of equal ones.
 * Positions on open decks do not depend on the seed: where nothing is packed between walls, the first plan is the only one. The same
 * request and number of tries give the same plan unless it is stopped. Cost: that of a plan a try.
 */
public final class JourneySearch {
    /** Tries for which nobody set a number. */
    public static final int USUAL_TRIES = 6;

    private final JourneyChecker checker;
    private final Loader loader;

    public JourneySearch(JourneyChecker checker, Loader loader) {
        this.checker = checker;
        this.loader = loader;
    }

    /**
     * Searches.
     *
     * @param tries plans at most, from 1
     * @param observer is told after each plan, on the calling thread
     * @param stop ends what is being packed and then the search; the best plan so far is the result
     * @throws IllegalArgumentException if the journey names what there is not
     */
    public PlanResult search(PlanRequest request, int tries, Consumer<PlanProgress> observer, StopSignal stop) {
        PlanResult best = null;
        PlanMeasure least = null;
        for (int i = 0; best == null || least == null || i < tries && !stop.stopped(); i++) {
            LoaderPacker packer = new LoaderPacker(loader, stop);
            PlanResult found = new JourneyPlanner(checker, packer)
                    .plan(new PlanRequest(request.journey(), request.parts(), request.seed() + i));
            PlanMeasure measure = PlanMeasure.of(found.ledger().all());
            if (best == null || least == null || measure.compareTo(least) < 0) {
                best = found;
                least = measure;
            }
            boolean last = !packer.asked();
            observer.accept(new PlanProgress(i + 1, last ? i + 1 : tries, least));
            if (last) {
                break;
            }
        }
        return best;
    }
}
