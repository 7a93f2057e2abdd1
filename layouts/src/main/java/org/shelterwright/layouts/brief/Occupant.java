package org.shelterwright.layouts.brief;

import org.shelterwright.catalog.item.Situation;

/**
 * One person inside the body: at work at a unit on station, or seated on one on the road.
 *
 * @param unit id of the unit that the person works or rides at; once for each person
 * @param situation when the person may be there
 */
public record Occupant(String unit, Situation situation) {}
