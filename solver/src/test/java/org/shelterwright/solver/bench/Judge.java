package org.shelterwright.solver.bench;

import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.solver.fit.FitScore;
import org.shelterwright.solver.fit.kernel.State;
import org.shelterwright.solver.fit.model.Amounts;
import org.shelterwright.solver.fit.model.FitProblem;

/** Judges a layout in one way, whoever found it: by the full ledger, and by the score of the search. */
public final class Judge {
    private final Checker checker;

    /**
     * A judgement.
     *
     * @param broken rows of the full ledger that are broken
     * @param score amounts (µm) of the three levels, from scratch
     */
    public record Judgement(long broken, FitScore score) {
        public boolean holds() {
            return broken == 0;
        }
    }

    public Judge(Checker checker) {
        this.checker = checker;
    }

    public Judgement judge(Layout layout) {
        Ledger ledger = checker.check(layout);
        FitProblem problem = FitProblem.of(checker.scene(layout));
        State state = new State(problem);
        state.restore(problem.start());
        return new Judgement(ledger.count(Verdict.BROKEN), score(state.score()));
    }

    /** Amounts of the search as a score. */
    public static FitScore score(Amounts amounts) {
        return new FitScore(amounts.hard(), amounts.medium(), amounts.soft());
    }
}
