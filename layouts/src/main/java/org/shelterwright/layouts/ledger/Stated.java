package org.shelterwright.layouts.ledger;

import org.shelterwright.catalog.source.Source;

/** What anything that must hold says of itself, of a layout or of a journey. */
public interface Stated {
    /** Stable id, "subject.name". */
    String id();

    Subject subject();

    String title();

    Severity severity();

    Source source();

    /**
     * What the row says when none is added: of what reports only what breaks or is missing, that it holds everywhere; of
     * anything else, why it does not apply.
     */
    String heldSentence();
}
