package org.shelterwright.layouts.ledger.access;

import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;

/** The row of a free depth before something. */
final class FacingRow {
    private FacingRow() {}

    /**
     * A depth that must be there.
     *
     * @param before what it is before, such as "Rack 2"
     * @param why added to what is needed, such as "facing earthed parts"; empty: nothing
     */
    static Row of(RowDraft draft, PlacedUnit owner, FacingSpace space, int needed, String before, String why) {
        draft.units(owner).state(Wording.situation(Situation.ON_STATION)).place(space.place());
        PlacedUnit facing = space.unit();
        if (facing != null) {
            draft.units(facing);
        }
        int lacking = needed - space.depth();
        if (space.place().flat() && facing == null) {
            draft.mend("Find another place for " + owner.name() + ".");
        } else if (lacking > 0) {
            draft.mend("Move " + (facing == null ? owner.name() : facing.name()) + " at least " + Wording.mm(lacking)
                    + " away" + (facing == null ? " from " + space.name() : " from " + owner.name()) + ".");
        }
        return draft.atLeast(
                needed / 1e3,
                space.depth() / 1e3,
                "mm",
                "Before " + before + " " + Wording.mm(space.depth()) + " are free, up to " + space.name() + "; "
                        + Wording.mm(needed) + " are needed" + (why.isEmpty() ? "" : " (" + why + ")") + ".");
    }
}
