package org.shelterwright.app.desk.session;

import java.util.List;
import java.util.Optional;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;

/**
 * Names a row of the ledger across changes of the layout, while its figures move.
 *
 * @param limit id of the limit
 * @param units ids of the units that it concerns
 * @param title its title, which tells rows of the same limit and units apart
 */
public record Finding(String limit, List<String> units, String title) {
    public Finding {
        units = List.copyOf(units);
    }

    public static Finding of(Row row) {
        return new Finding(row.limit(), row.units(), row.title());
    }

    /** The row, if the ledger still has it. */
    public Optional<Row> in(Ledger ledger) {
        return ledger.rows().stream().filter(row -> of(row).equals(this)).findFirst();
    }
}
