package org.shelterwright.layouts.ledger;

import java.util.ArrayList;
import java.util.List;

/** Collects the rows that a limit adds. */
public final class Rows {
    private final double closeShare;
    private final List<Row> rows = new ArrayList<>();

    /** @param closeShare use above which a met limit is close */
    public Rows(double closeShare) {
        this.closeShare = closeShare;
    }

    /** Begins a row under the title of its limit. */
    public RowDraft draft(Stated limit) {
        return new RowDraft(limit, closeShare, limit.title());
    }

    /** Begins a row under a title of its own. */
    public RowDraft draft(Stated limit, String title) {
        return new RowDraft(limit, closeShare, title);
    }

    public void add(Row row) {
        rows.add(row);
    }

    public List<Row> list() {
        return List.copyOf(rows);
    }
}
