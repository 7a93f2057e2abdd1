package org.shelterwright.layouts.layout;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Situation;

/**
 * Where one unit is.
 *
 * @param unit id of the unit
 * @param station its place on station
 * @param road its place on the road; {@code null} if it stays where it is
 */
public record Placement(
        String unit, Place station, @Nullable Place road, Pin pin) {
    public static Placement of(String unit, Place place) {
        return new Placement(unit, place, null, Pin.NONE);
    }

    public Place in(Situation situation) {
        return situation == Situation.ON_THE_ROAD && road != null ? road : station;
    }

    /** With another place in one situation; a place on the road is then its own. */
    public Placement with(Situation situation, Place place) {
        return situation == Situation.ON_STATION ? withStation(place) : withRoad(place);
    }

    public Placement withStation(Place place) {
        return new Placement(unit, place, road, pin);
    }

    public Placement withRoad(@Nullable Place place) {
        return new Placement(unit, station, place, pin);
    }

    public Placement withPin(Pin other) {
        return new Placement(unit, station, road, other);
    }
}
