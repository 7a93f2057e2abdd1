package org.shelterwright.layouts.transport.edit;

import java.util.List;
import java.util.stream.Stream;
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
        Leg of = WithdrawLegAcceptance.named(journey, leg);
        List<Acceptance> kept = WithdrawLegAcceptance.without(of, acceptance.limit(), acceptance.units());
        return journey.with(of.withAcceptances(
                Stream.concat(kept.stream(), Stream.of(acceptance)).toList()));
    }
}
