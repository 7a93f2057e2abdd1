package org.shelterwright.layouts.ledger;

/** What a broken limit means for a layout; the search weighs limits in this order. */
public enum Severity {
    /** It cannot be built or is unsafe. */
    HARD,
    /** It can be built, but not worked at or assembled as it should. */
    MEDIUM
}
