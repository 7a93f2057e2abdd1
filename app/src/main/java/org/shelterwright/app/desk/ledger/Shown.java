package org.shelterwright.app.desk.ledger;

import java.util.Optional;
import org.shelterwright.layouts.ledger.Verdict;

/**
 * What of the ledger is shown.
 *
 * @param only rows of one verdict; empty for all
 * @param bySubject whether lines are put together by subject
 * @param allMet whether every met row is shown, and not just the tightest of each limit
 */
record Shown(Optional<Verdict> only, boolean bySubject, boolean allMet) {
    static final Shown USUAL = new Shown(Optional.empty(), false, false);

    /** Shows one verdict only, or all again if it was that one. */
    Shown toggled(Verdict verdict) {
        return new Shown(
                only.equals(Optional.of(verdict)) ? Optional.empty() : Optional.of(verdict), bySubject, allMet);
    }

    Shown every() {
        return new Shown(Optional.empty(), bySubject, allMet);
    }

    Shown bySubject(boolean other) {
        return new Shown(only, other, allMet);
    }

    Shown withAllMet() {
        return new Shown(only, bySubject, true);
    }
}
