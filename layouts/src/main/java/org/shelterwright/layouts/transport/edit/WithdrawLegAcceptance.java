package org.shelterwright.layouts.transport.edit;

import java.util.List;
import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Leg;

/**
 * Takes back the acceptance of a row of the ledger of a leg.
 *
 * @param leg id of the leg
 * @param limit id of the limit
 * @param units ids of the pieces and loads that the row concerns
 */
public record WithdrawLegAcceptance(String leg, String limit, List<String> units) implements JourneyEdit {
    public WithdrawLegAcceptance {
        units = List.copyOf(units);
    }

    @Override
    public String name() {
        return "Accept " + limit + " no more";
    }

    @Override
    public Journey apply(Journey journey) {
        Leg of = journey.legOrThrow(leg);
        return journey.with(of.withAcceptances(Acceptance.without(of.acceptances(), limit, units)));
    }
}
