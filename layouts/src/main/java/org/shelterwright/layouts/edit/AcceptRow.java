package org.shelterwright.layouts.edit;

import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.layout.Layout;

/** Accepts a row of the ledger with a reason; an earlier acceptance of the same row is replaced. */
public record AcceptRow(Acceptance acceptance) implements Edit {
    @Override
    public String name() {
        return "Accept " + acceptance.limit();
    }

    @Override
    public Layout apply(Layout layout) {
        return layout.withAcceptances(acceptance.addedTo(layout.acceptances()));
    }
}
