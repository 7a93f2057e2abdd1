package org.shelterwright.layouts.ledger.fit;

import java.util.ArrayList;
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
 * @param unknown names of the units whose mass is not stated
 */
record CarriedMass(double massKg, List<String> unknown) {
    CarriedMass {
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
        double massKg = 0;
        List<String> unknown = new ArrayList<>();
        for (PlacedUnit one : scene.units()) {
            if (carried.contains(one.id())) {
                Double own = one.item().mass().massKg();
                massKg += own == null ? 0 : own;
                massKg += one.item().tanks().stream().mapToDouble(Tank::fullKg).sum();
                if (own == null) {
                    unknown.add(one.name());
                }
            }
        }
        return new CarriedMass(massKg, unknown);
    }

    boolean known() {
        return unknown.isEmpty();
    }
}
