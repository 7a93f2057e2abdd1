package org.shelterwright.layouts.ledger.heat;

import org.shelterwright.catalog.item.AirHandling;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.air.StateHeat;

/**
 * There is fresh air for the people inside: {@code n V_p ≤ V}, with {@code heat.fresh-air} for each person as V_p. Leaks do
 * not count. Air that an exhaust draws in does not count either: it comes from anywhere.
 *
 * <p>Source: the figure of the rule sets; 5 to 8 l/s for each occupant (18 to 28.8 m³/h), as quoted from the code of practice
 * to the Workplace (Health, Safety and Welfare) Regulations 1992.
 */
final class FreshAir extends HeatLimit {
    FreshAir() {
        super(
                "heat.fresh-air",
                "Fresh air",
                Source.quoted(
                        "Approved code of practice to the Workplace (Health, Safety and Welfare) Regulations 1992",
                        "regulation 6, 5 to 8 l/s for each occupant"),
                "Nobody is inside.");
    }

    @Override
    Need need(StateHeat heat) {
        int people = heat.state().people();
        Double needed = heat.freshNeededM3h();
        return new Need(
                heat,
                needed == null ? 0 : needed,
                needed == null ? null : Double.valueOf(heat.freshM3h()),
                people == 0 ? "" : " (" + people + (people == 1 ? " person)" : " people)"));
    }

    @Override
    boolean open(StateHeat heat) {
        return false;
    }

    @Override
    String unit() {
        return "m³/h";
    }

    @Override
    String what() {
        return "The people inside need";
    }

    @Override
    String mend(double missing) {
        return "Bring in at least " + amount(missing) + " more outside air, or have fewer people inside.";
    }

    @Override
    boolean does(AirHandling air) {
        return air.freshAirM3h() != null;
    }
}
