package org.shelterwright.solver.change;

import java.util.List;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.revision.Revision;

/**
 * A layout for a changed list.
 *
 * @param revision what differs from the layout as it was
 * @param broken rows that were not broken before; empty if the change was found
 * @param loosened ids of the units that the search was allowed to move
 * @param searches how many searches it took; none if nothing has to move
 */
public record ChangeResult(Revision revision, List<Row> broken, List<String> loosened, int searches) {
    public ChangeResult {
        broken = List.copyOf(broken);
        loosened = List.copyOf(loosened);
    }
}
