package org.shelterwright.app.desk.session;

import org.shelterwright.layouts.edit.History;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.scene.Scene;

/**
 * How things stand at one moment; everything that is shown comes from one of these. Immutable.
 *
 * @param history the layout with its changes
 * @param scene the layout that is shown, resolved: that of the history, or one that is being tried out
 * @param ledger every limit of the scene, answered; those whose answer is still to come are not assessed and say so
 * @param tryingOut whether the scene shows something that is not in the history, such as a unit being dragged
 */
public record Standing(History<Layout> history, Scene scene, Ledger ledger, boolean tryingOut) {
    /** The layout that is shown. */
    public Layout layout() {
        return scene.layout();
    }

    /** Whether every limit is answered. */
    public boolean settled() {
        return ledger.rows().stream().noneMatch(Row::awaited);
    }
}
