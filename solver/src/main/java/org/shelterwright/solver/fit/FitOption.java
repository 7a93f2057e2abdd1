package org.shelterwright.solver.fit;

import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;

/**
 * A layout that a search offers, with the ledger of an independent full check.
 *
 * @param ledger made from scratch by the checker, not by the search
 */
public record FitOption(Layout layout, Ledger ledger, FitScore score) {}
