package org.shelterwright.layouts.ledger.fit;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * The mass that a unit puts on what carries it: its own, its tanks full, and all that rests on or under it.
 *
 * @param massKg the part that is known (kg)
 * @param units the unit and all that rests on or under it
 * @param unknown names of the units whose mass is not stated
 */
record CarriedMass(double massKg, List<PlacedUnit> units, List<String> unknown) {
    CarriedMass {
        units = List.copyOf(units);
        unknown = List.copyOf(unknown);
    }

    /** Cost: the number of units times the length of the chain. Units mounted in a circle are counted once. */
    static CarriedMass of(Scene scene, PlacedUnit unit, Situation situation) {
        Set<String> carried = new HashSet<>(Set.of(unit.id()));
        boolean found = true;
        while (found) {
            found = false;
            for (PlacedUnit other : scene.units()) {
                String host = other.place(situation).host();
                if (host != null && carried.contains(host)) {
                    found |= carried.add(other.id());
                }
            }
        }
        List<PlacedUnit> units =
                scene.units().stream().filter(one -> carried.contains(one.id())).toList();
        List<String> unknown = units.stream()
                .filter(one -> one.item().mass().massKg() == null)
                .map(PlacedUnit::name)
                .toList();
        return new CarriedMass(units.stream().mapToDouble(CarriedMass::fullKg).sum(), units, unknown);
    }

    /** Mass of one unit with its tanks full (kg); what is not stated counts as zero. */
    static double fullKg(PlacedUnit unit) {
        Double own = unit.item().mass().massKg();
        return (own == null ? 0 : own)
                + unit.item().tanks().stream().mapToDouble(Tank::fullKg).sum();
    }
}
