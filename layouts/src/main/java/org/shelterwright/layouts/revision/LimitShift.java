package org.shelterwright.layouts.revision;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;

/**
 * A limit whose answer differs between two revisions.
 *
 * @param limit id of the limit
 * @param title what is limited
 * @param first its tightest row in the first; {@code null} if there is none of this title
 * @param second the same in the other
 */
public record LimitShift(
        String limit,
        String title,
        @Nullable Row first,
        @Nullable Row second) {
    /** Uses that differ by less are taken for the same. */
    private static final double LEAST = 0.005;

    private record Key(String limit, String title) {}

    /** The limits that differ in verdict or use: what is worst now first. */
    public static List<LimitShift> between(Ledger before, Ledger after) {
        Map<Key, Row> old = worst(before);
        Map<Key, Row> now = worst(after);
        List<LimitShift> shifts = new ArrayList<>();
        now.forEach((key, row) -> {
            Row was = old.remove(key);
            if (was == null ? !row.doesNotApply() : differs(was, row)) {
                shifts.add(new LimitShift(key.limit, key.title, was, row));
            }
        });
        old.forEach((key, row) -> {
            if (!row.doesNotApply()) {
                shifts.add(new LimitShift(key.limit, key.title, row, null));
            }
        });
        return shifts;
    }

    private static Map<Key, Row> worst(Ledger ledger) {
        Map<Key, Row> worst = new LinkedHashMap<>();
        ledger.rows().forEach(row -> worst.putIfAbsent(new Key(row.limit(), row.title()), row));
        return worst;
    }

    private static boolean differs(Row a, Row b) {
        if (a.verdict() != b.verdict()) {
            return true;
        }
        Double first = a.use();
        Double second = b.use();
        return first == null || second == null
                ? first != null || second != null
                : Math.abs(first - second) > LEAST * Math.max(1, Math.abs(first));
    }
}
