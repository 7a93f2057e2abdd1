package org.shelterwright.app.desk.ledger;

import java.util.List;
import java.util.Optional;
import org.shelterwright.app.desk.session.Finding;
import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;

/** What a ledger column shows the rows of: a layout, or a leg of a journey. */
public interface Judged {
    /** What stands over its rows. */
    String title();

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

    /** Why there is no finding to go to; empty if there is one. */
    Optional<String> obstacle();

    /** Goes to the finding that is worst of all. */
    void worst();

    /** Goes to the next finding, or for a negative step to the one before. */
    void step(int by);

    /** What a person has accepted of a row. */
    Optional<Acceptance> accepted(Row row);

    /** Accepts rows as one change of that name. */
    void accept(String name, List<Acceptance> given);

    /** Takes back what was accepted of rows, as one change of that name. */
    void withdraw(String name, List<Row> rows);

    /** Runs something after each change of the rows or of what they were. */
    void onRows(Runnable action);

    /** Runs something when another row is looked at. */
    void onLook(Runnable action);
}
