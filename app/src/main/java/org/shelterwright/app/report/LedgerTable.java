package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.tables.Table;
import org.shelterwright.layouts.ledger.Row;

/** The ledger as a table. */
final class LedgerTable {

    private LedgerTable() {}

    static Table of(Issue issue) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (Row row : issue.ledger().rows()) {
            rows.add(Arrays.asList(
                    row.verdict().word(),
                    row.subject().title(),
                    row.limit(),
                    row.title(),
                    RowText.units(row, issue.scene()),
                    row.state(),
                    row.sense().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    row.demand(),
                    row.nominal(),
                    row.capacity(),
                    row.share(),
                    row.margin(),
                    row.unit(),
                    row.finding(),
                    row.mend(),
                    row.source().text()));
        }
        return new Table(
                "Ledger",
                List.of(
                        "verdict",
                        "subject",
                        "limit",
                        "title",
                        "units",
                        "load state",
                        "sense",
                        "demand",
                        "nominal",
                        "capacity",
                        "use",
                        "margin",
                        "unit",
                        "finding",
                        "mend",
                        "source"),
                rows);
    }
}
