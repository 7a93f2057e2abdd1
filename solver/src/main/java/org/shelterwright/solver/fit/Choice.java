package org.shelterwright.solver.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.solver.fit.distinct.Difference;
import org.shelterwright.solver.fit.distinct.LedgerScore;
import org.shelterwright.solver.fit.model.Amounts;

/** Chooses the best layout and truly different ones beside it, each checked from scratch. */
final class Choice {
    /** Layouts closer than this are taken for the same. */
    static final double LEAST_DIFFERENCE = 0.15;

    private static final int MOST_CHECKS = 40;

    private final Checker checker;
    private final UnaryOperator<Layout> finish;

    /**
     * A layout that a search found.
     *
     * @param soft what the search says of its soft level
     */
    record Found(Layout layout, long soft) {}

    /** @param finish what is done to each layout before it is checked, such as stowing pieces anew */
    Choice(Checker checker, UnaryOperator<Layout> finish) {
        this.checker = checker;
        this.finish = finish;
    }

    /**
     * Chooses from what was found.
     *
     * @param found in an order that does not depend on threads; the best by the search first
     * @param count how many are wanted
     * @return the best by its ledger first; the others differ from it and from each other, and break no more than it does
     */
    List<FitOption> choose(List<Found> found, int count) {
        List<FitOption> checked = new ArrayList<>();
        List<Layout> seen = new ArrayList<>();
        for (Found one : found) {
            boolean twin = seen.stream()
                    .anyMatch(layout -> layout.placements().equals(one.layout().placements()));
            if (!twin && checked.size() < MOST_CHECKS) {
                seen.add(one.layout());
                Layout finished = finish.apply(one.layout());
                Ledger ledger = checker.check(finished);
                Amounts score = LedgerScore.of(ledger, checker.book(), one.soft());
                checked.add(new FitOption(finished, ledger, score(score)));
            }
        }
        checked.sort(Comparator.comparing(FitOption::score));
        List<FitOption> chosen = new ArrayList<>();
        for (FitOption option : checked) {
            if (chosen.size() < count && (chosen.isEmpty() || apart(option, chosen))) {
                chosen.add(option);
            }
        }
        return chosen;
    }

    /** The score as it is shown. */
    static FitScore score(Amounts amounts) {
        return new FitScore(amounts.hard(), amounts.medium(), amounts.soft());
    }

    private static boolean apart(FitOption option, List<FitOption> chosen) {
        FitScore best = chosen.get(0).score();
        boolean asGood = option.score().hard() <= best.hard() && option.score().medium() <= best.medium();
        return asGood
                && chosen.stream()
                        .allMatch(other -> Difference.between(option.layout(), other.layout()) >= LEAST_DIFFERENCE);
    }
}
