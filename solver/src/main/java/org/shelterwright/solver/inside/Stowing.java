package org.shelterwright.solver.inside;

import java.util.List;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;

/**
 * What an arrangement of the insides of units gave.
 *
 * @param layout with a place for every piece that found one
 * @param ledger of an independent full check
 * @param racked number of rack-mounted pieces with a place
 * @param stowed number of loose pieces with a place
 * @param toPlace pieces without a place
 */
public record Stowing(Layout layout, Ledger ledger, int racked, int stowed, List<PieceSpec> toPlace) {
    public Stowing {
        toPlace = List.copyOf(toPlace);
    }
}
