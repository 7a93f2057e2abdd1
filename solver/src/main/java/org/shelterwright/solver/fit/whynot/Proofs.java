package org.shelterwright.solver.fit.whynot;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.fit.model.FitProblem;

/** All cheap proofs that a brief cannot hold, each a bound that no layout can beat. */
public final class Proofs {
    private Proofs() {}

    /**
     * Looks for proofs.
     *
     * @param best the best layout that was found; bounds on moments of mass are taken at it
     * @return one sentence each with its figures, the strongest first; empty if no bound is broken. Cost: linear
     */
    public static List<String> of(FitProblem problem, Checker checker, Layout best) {
        Scene scene = problem.scene();
        List<String> reasons = new ArrayList<>();
        reasons.addAll(new NoPlace(problem).reasons());
        reasons.addAll(new SpaceBounds(scene).reasons());
        reasons.addAll(new MassBounds(problem, checker.book(), best).reasons());
        return reasons;
    }
}
