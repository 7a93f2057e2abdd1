package org.shelterwright.app.cli.json;

import java.util.List;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import tools.jackson.databind.node.ObjectNode;

/** The result of {@code check} as JSON. */
public final class CheckJson {
    private CheckJson() {}

    /**
     * Gives the result.
     *
     * @param ledger the whole ledger, which the counts and the worst verdicts are of
     * @param rows the rows that are listed
     */
    public static String of(ResultHead head, int status, Layout layout, Ledger ledger, List<Row> rows) {
        ObjectNode root = head.begin()
                .put("status", status)
                .put("id", layout.brief().id())
                .put("name", layout.brief().name());
        root.set("counts", LedgerJson.counts(ledger));
        root.set("subjects", LedgerJson.subjects(ledger));
        root.set("rows", LedgerJson.rows(rows, layout));
        return JsonText.write(root);
    }
}
