package org.shelterwright.layouts.inside;

import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Situation;

/**
 * The mass of a unit with what is in it.
 *
 * @param station on station, without what is taken out, with what is used there
 * @param road on the road
 */
public record UnitMass(MassData station, MassData road) {
    public static UnitMass of(MassData always) {
        return new UnitMass(always, always);
    }

    public MassData in(Situation situation) {
        return situation == Situation.ON_STATION ? station : road;
    }
}
