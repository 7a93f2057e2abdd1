package org.shelterwright.layouts.state;

import org.shelterwright.catalog.item.Situation;

/**
 * The part of a load state that is either so or not.
 *
 * @param trailer whether the trailer is coupled
 */
public record Mode(Situation situation, boolean trailer) {
    public boolean onTheRoad() {
        return situation == Situation.ON_THE_ROAD;
    }
}
