package org.shelterwright.solver.fit.whynot;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.LedgerBuilder;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.Verdict;
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
        reasons.addAll(ofBrief(checker, scene));
        return reasons;
    }

    /** What is broken wherever units stand. */
    private static List<String> ofBrief(Checker checker, Scene scene) {
        List<Limit> limits = checker.book().limits().stream()
                .filter(Limit.OfBrief.class::isInstance)
                .toList();
        return LedgerBuilder.full(new LimitBook(limits), scene).rows().stream()
                .filter(row -> row.verdict() == Verdict.BROKEN)
                .map(row -> "Wherever the units stand: " + row.finding())
                .toList();
    }
}
