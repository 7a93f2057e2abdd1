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
        Leg of = named(journey, leg);
        return journey.with(of.withAcceptances(without(of, limit, units)));
    }

    static Leg named(Journey journey, String id) {
        return journey.leg(id)
                .orElseThrow(() -> new IllegalArgumentException("There is no leg \"" + id + "\" in this journey."));
    }

    static List<Acceptance> without(Leg leg, String limit, List<String> units) {
        return leg.acceptances().stream()
                .filter(one -> !one.covers(limit, units))
                .toList();
    }
}
