package org.shelterwright.layouts.edit;

import java.util.List;
import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.layout.Layout;

/**
 * Takes back the acceptance of a row of the ledger.
 *
 * @param limit id of the limit
 * @param units ids of the units that the row concerns
 */
public record WithdrawAcceptance(String limit, List<String> units) implements Edit {
    public WithdrawAcceptance {
        units = List.copyOf(units);
    }

    @Override
    public String name() {
        return "Accept " + limit + " no more";
    }

    @Override
    public Layout apply(Layout layout) {
        return layout.withAcceptances(Acceptance.without(layout.acceptances(), limit, units));
    }
}
