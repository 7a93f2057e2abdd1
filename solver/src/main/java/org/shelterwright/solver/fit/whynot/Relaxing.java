package org.shelterwright.solver.fit.whynot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.Wording;

/** The smallest set of limits that some layout breaks: relaxing just these makes that layout hold. */
public final class Relaxing {
    /** Tries a short search with some limits left out and gives the ledger of its best layout, all limits in it. */
    @FunctionalInterface
    public interface Attempt {
        Ledger without(Set<String> limits);
    }

    private Relaxing() {}

    /** Ids of the limits that a ledger breaks, in its order. */
    public static Set<String> broken(Ledger ledger) {
        Set<String> ids = new LinkedHashSet<>();
        ledger.rows().stream()
                .filter(row -> row.verdict() == Verdict.BROKEN)
                .map(Row::limit)
                .forEach(ids::add);
        return ids;
    }

    /**
     * Looks for a ledger that breaks as few limits as may be.
     *
     * @param known ledgers of layouts that were found with all limits
     * @param attempt a short search; called once for each limit that the best of them breaks, until one is enough
     */
    public static Ledger fewest(List<Ledger> known, Attempt attempt) {
        Comparator<Ledger> order = Comparator.comparing(
                        (Ledger ledger) -> broken(ledger).size())
                .thenComparing(ledger -> ledger.count(Verdict.BROKEN));
        Ledger fewest = known.stream().min(order).orElseThrow();
        for (String limit : List.copyOf(broken(fewest))) {
            if (broken(fewest).size() > 1) {
                Ledger tried = attempt.without(Set.of(limit));
                fewest = order.compare(tried, fewest) < 0 ? tried : fewest;
            }
        }
        return fewest;
    }

    /**
     * One line for each broken limit: its id, by how much at the worst place, and where; such as "access.walkway by 80 mm (Way to
     * Rack 3; 2 more places)". What is wrong there is told by the ledger.
     */
    public static List<String> sentences(Ledger ledger) {
        Map<String, List<Row>> byLimit = new TreeMap<>();
        for (Row row : ledger.rows()) {
            if (row.verdict() == Verdict.BROKEN) {
                byLimit.computeIfAbsent(row.limit(), key -> new ArrayList<>()).add(row);
            }
        }
        List<String> sentences = new ArrayList<>();
        byLimit.forEach((limit, rows) -> {
            Row worst =
                    rows.stream().max(Comparator.comparingDouble(Row::excess)).orElseThrow();
            int others = rows.size() - 1;
            String more = others == 0 ? "" : "; " + Wording.count(others, "more place");
            sentences.add(limit + " by " + Amounts.number(worst.excess(), 1)
                    + (worst.unit().isEmpty() ? "" : " ") + worst.unit() + " (" + worst.title() + more + ")");
        });
        return sentences;
    }
}
