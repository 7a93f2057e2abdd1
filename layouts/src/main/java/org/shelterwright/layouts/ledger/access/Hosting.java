package org.shelterwright.layouts.ledger.access;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** Who stands on whom. */
final class Hosting {
    private Hosting() {}

    /**
     * Whether a unit stands on the top of an owner, directly or on something that stands there. Cost: the length of the
     * chain.
     */
    static boolean standsOn(Scene scene, PlacedUnit unit, PlacedUnit owner, Situation situation) {
        Place place = unit.place(situation);
        int links = scene.units().size();
        while (place != null && place.host() != null && links-- > 0) {
            if (place.host().equals(owner.id())) {
                return place.surface() == Surface.ON_UNIT;
            }
            place = next(scene, place.host(), situation);
        }
        return false;
    }

    private static @Nullable Place next(Scene scene, String host, Situation situation) {
        Optional<PlacedUnit> unit = scene.unit(host);
        return unit.isPresent() ? unit.get().place(situation) : null;
    }
}
