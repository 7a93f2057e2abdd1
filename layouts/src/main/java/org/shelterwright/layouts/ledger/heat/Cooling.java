package org.shelterwright.layouts.ledger.heat;

import org.shelterwright.catalog.item.AirHandling;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.air.StateHeat;

/**
 * What cools takes out all the heat that comes in: {@code Q = Σ P_mean f + conversion + people + UA (T_o − T_r) + sun + air},
 * at the greatest room temperature T_r, with the share f of its power that a unit gives to the room. Heat in moisture counts in full. Coolers give what they give
 * at the outside temperature of the state, if their supply is live in it.
 *
 * <p>Source: ASHRAE Handbook Fundamentals 2013, chapter 18, heat of people; sol-air temperature for the sun.
 */
final class Cooling extends HeatLimit {
    Cooling() {
        super(
                "heat.cooling",
                "Cooling",
                Source.quoted("ASHRAE Handbook Fundamentals 2013", "chapter 18, cooling load"),
                "Nothing must be cooled.");
    }

    @Override
    Need need(StateHeat heat) {
        return new Need(
                heat,
                heat.coolingNeededW(),
                heat.coolingW(),
                " (equipment " + amount(heat.equipmentW() + heat.conversionW()) + ", people "
                        + amount(heat.peopleSensibleW() + heat.peopleLatentW()) + ", walls and sun "
                        + amount(heat.throughW() + heat.sunW()) + ", air "
                        + amount(heat.airSensibleW() + heat.airLatentW()) + ")");
    }

    @Override
    boolean open(StateHeat heat) {
        return !heat.gaps().isEmpty();
    }

    @Override
    String unit() {
        return "W";
    }

    @Override
    String what() {
        return "The room must be cooled by";
    }

    @Override
    String mend(double missing) {
        return "Add cooling of at least " + amount(missing) + ", state what is idle or off then, or keep the sun off.";
    }

    @Override
    boolean does(AirHandling air) {
        return air.coolingW() != null;
    }
}
