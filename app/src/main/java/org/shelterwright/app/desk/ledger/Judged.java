package org.shelterwright.app.desk.ledger;

import java.util.Optional;
import org.shelterwright.app.desk.session.Finding;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;

/** What a ledger column shows the rows of, when it is no layout. */
public interface Judged {
    /** Its rows; without any as long as nothing is there. */
    Ledger ledger();

    /** Its rows as they were last saved. */
    Ledger saved();

    /** Share of a capacity from which a row is close. */
    double closeShare();

    /** The row that is looked at. */
    Optional<Finding> finding();

    /** Looks at a row without changing what is selected. */
    void look(Finding finding);

    /** Looks at a row and selects what it concerns. */
    void show(Row row);

    /** Goes to the next finding, or for a negative step to the one before. */
    void step(int by);

    /** Runs something after each change of the rows or of what is looked at. */
    void onChange(Runnable action);
}
