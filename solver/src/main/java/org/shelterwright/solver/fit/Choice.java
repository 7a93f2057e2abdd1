package org.shelterwright.solver.fit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.UnaryOperator;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.solver.fit.distinct.Difference;
import org.shelterwright.solver.fit.distinct.LedgerScore;
import org.shelterwright.solver.fit.model.Amounts;

/** Checks layouts that a search found from scratch, and chooses the best and truly different ones beside it. */
final class Choice {
    /** Layouts closer than this are taken for the same. */
    static final double LEAST_DIFFERENCE = 0.15;

    private static final int MOST_CHECKS = 40;

    private final Checker checker;
    private final UnaryOperator<Layout> finish;
    private final Crew crew;

    /**
     * A layout that a search found.
     *
     * @param soft what the search says of its soft level
     */
    record Found(Layout layout, long soft) {}

    /**
     * @param finish what is done to each layout before it is checked, such as stowing pieces anew; asked by several threads at once
     * @param crew does the work
     */
    Choice(Checker checker, UnaryOperator<Layout> finish, Crew crew) {
        this.checker = checker;
        this.finish = finish;
        this.crew = crew;
    }

    /**
     * Checks what was found.
     *
     * @param found in an order that does not depend on threads; the best by the search first
     * @return without twins, the best by its ledger first
     */
    List<FitOption> checked(List<Found> found) {
        List<Callable<FitOption>> tasks = new ArrayList<>();
        Set<Map<String, Placement>> seen = new HashSet<>();
        for (Found one : found) {
            if (tasks.size() < MOST_CHECKS && seen.add(one.layout().placements())) {
                tasks.add(() -> checked(one));
            }
        }
        List<FitOption> checked = new ArrayList<>(crew.all(tasks));
        checked.sort(FitOption.BEST_FIRST);
        return checked;
    }

    private FitOption checked(Found one) {
        Layout finished = finish.apply(one.layout());
        Ledger ledger = checker.check(finished);
        Amounts score = LedgerScore.of(ledger, checker.book(), one.soft());
        return new FitOption(finished, ledger, score(score));
    }

    /** Of options in order the first, and up to {@code count} that differ from it and from each other and break no more than it does. */
    static List<FitOption> apart(List<FitOption> options, int count) {
        List<FitOption> chosen = new ArrayList<>();
        for (FitOption option : options) {
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
        return option.asGoodAs(chosen.get(0))
                && chosen.stream()
                        .allMatch(other -> Difference.between(option.layout(), other.layout()) >= LEAST_DIFFERENCE);
    }
}
