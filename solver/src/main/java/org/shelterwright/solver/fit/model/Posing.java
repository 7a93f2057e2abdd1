package org.shelterwright.solver.fit.model;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** Poses single units at the origin, so that what they fill, keep free and bolt into is read off the scene's own rules. */
final class Posing {
    private final Scene scene;

    Posing(Scene scene) {
        this.scene = scene;
    }

    /** A unit with the low corner of its turned size at the origin of the body. */
    PlacedUnit at(UnitSpec unit, Surface surface, @Nullable String host, QuarterTurn turn) {
        Place place = new Place(surface, host, new Pose(Point.ORIGIN, turn));
        Placement placement = Placement.of(unit.id(), place);
        return Scene.of(scene.layout().withPlacements(Map.of(unit.id(), placement)), scene.rules())
                .units()
                .get(0);
    }
}
