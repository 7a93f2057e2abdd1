package org.shelterwright.layouts.transport.edit;

import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Leg;

/**
 * Accepts a row of the ledger of a leg with a reason; an earlier acceptance of the same row is replaced.
 *
 * @param leg id of the leg
 */
public record AcceptLegRow(String leg, Acceptance acceptance) implements JourneyEdit {
    @Override
    public String name() {
        return "Accept " + acceptance.limit();
    }

    @Override
    public Journey apply(Journey journey) {
        Leg of = journey.legOrThrow(leg);
        return journey.with(of.withAcceptances(acceptance.addedTo(of.acceptances())));
    }
}
