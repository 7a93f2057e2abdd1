package org.shelterwright.layouts.edit;

import org.shelterwright.layouts.layout.Layout;

/** One change that a person makes to a layout. It may break limits, which the ledger then shows, but never the layout. */
public sealed interface Edit extends Change<Layout>
        permits AcceptRow,
                AddUnit,
                AddWish,
                AlignUnits,
                ChangeItem,
                DuplicateUnits,
                LockPiece,
                PinRoute,
                PinUnit,
                PutPiece,
                PutUnit,
                PutUnits,
                RemoveUnit,
                RemoveWish,
                RenameUnit,
                SetBoltDown,
                SetCrew,
                SetInventory,
                SetLimit,
                SetOccupants,
                SetRoutes,
                SetRuleSets,
                SetTrailer,
                SetWires,
                SpreadUnits,
                StowUnit,
                SwapItem,
                SwapPieces,
                SwapUnits,
                TakeOutPiece,
                TakeOutUnit,
                TurnUnit,
                WithdrawAcceptance {
    /**
     * The layout after this change. Cost: linear in the units.
     *
     * @throws IllegalArgumentException with a sentence if the change makes no sense for this layout
     */
    @Override
    Layout apply(Layout layout);
}
