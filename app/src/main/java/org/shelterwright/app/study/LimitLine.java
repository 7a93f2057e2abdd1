package org.shelterwright.app.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;

/**
 * One limit in the ledgers of several layouts, each by its worst row.
 *
 * @param limit id of the limit
 * @param rows one a layout; {@code null} where the limit has no row
 */
record LimitLine(String limit, List<@Nullable Row> rows) {
    /** The lines of all limits, in the order in which the ledgers first name them: the worst of any layout first. */
    static List<LimitLine> of(List<Compared> compared) {
        Map<String, @Nullable Row[]> worst = new LinkedHashMap<>();
        for (Verdict verdict : Verdict.values()) {
            for (int i = 0; i < compared.size(); i++) {
                for (Row row : compared.get(i).ledger().rows()) {
                    if (row.verdict() == verdict) {
                        @Nullable
                        Row[] line = worst.computeIfAbsent(row.limit(), limit -> new @Nullable Row[compared.size()]);
                        if (line[i] == null) {
                            line[i] = row;
                        }
                    }
                }
            }
        }
        List<LimitLine> lines = new ArrayList<>();
        worst.forEach((limit, rows) -> lines.add(new LimitLine(limit, Arrays.asList(rows))));
        return lines;
    }

    /** Whether it says anything: it applies somewhere, and is not the same everywhere. */
    boolean telling() {
        return rows.stream().anyMatch(row -> row != null && row.verdict() != Verdict.MET) || differs();
    }

    private boolean differs() {
        List<@Nullable Double> uses = new ArrayList<>();
        for (Row row : rows) {
            uses.add(row == null || row.doesNotApply() ? null : row.use());
        }
        return uses.stream().anyMatch(use -> !Objects.equals(use, uses.get(0)));
    }
}
