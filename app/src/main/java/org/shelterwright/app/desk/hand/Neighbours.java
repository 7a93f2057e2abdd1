package org.shelterwright.app.desk.hand;

import java.util.List;
import java.util.Set;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** The distances of a unit that stands still to what is beside it. */
public final class Neighbours {
    private Neighbours() {}

    /** The nearest neighbour on each side, along the surface that the unit is mounted on. */
    public static List<Clearance> of(Scene scene, PlacedUnit unit, Situation situation) {
        Moving moving = Moving.of(scene, Set.of(unit.id()), situation).orElseThrow();
        Snapping still = new Snapping(moving, new Catching(0, 0));
        return Distances.of(Neighbour.filled(unit, situation), still.neighbours(), still.along());
    }
}
