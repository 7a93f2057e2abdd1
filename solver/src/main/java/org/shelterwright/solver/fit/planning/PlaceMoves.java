package org.shelterwright.solver.fit.planning;

import java.util.Iterator;
import java.util.List;
import java.util.Random;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import org.shelterwright.solver.fit.kernel.MoveMaker;
import org.shelterwright.solver.fit.model.Spot;

/** Gives the local search the same proposals as the annealing has, one unit (with what it carries) or two at a time. */
public class PlaceMoves implements MoveIteratorFactory<FitPlan, PlaceMove> {
    @Override
    public long getSize(ScoreDirector<FitPlan> director) {
        return 1000L * director.getWorkingSolution().getStands().size();
    }

    @Override
    public Iterator<PlaceMove> createOriginalMoveIterator(ScoreDirector<FitPlan> director) {
        throw new UnsupportedOperationException("The moves have no end and so no original order.");
    }

    @Override
    public Iterator<PlaceMove> createRandomMoveIterator(ScoreDirector<FitPlan> director, Random random) {
        LaneDesk desk = director.getWorkingSolution().desk();
        MoveMaker maker = new MoveMaker(desk.live(), desk.dice());
        return new Iterator<>() {
            @Override
            public boolean hasNext() {
                return maker.hasMovable();
            }

            @Override
            public PlaceMove next() {
                List<MoveMaker.Step> steps = maker.next();
                return new PlaceMove(
                        steps.stream().mapToInt(MoveMaker.Step::slot).toArray(),
                        steps.stream().map(MoveMaker.Step::spot).toArray(Spot[]::new));
            }
        };
    }
}
