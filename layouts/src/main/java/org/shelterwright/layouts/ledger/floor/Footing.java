package org.shelterwright.layouts.ledger.floor;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.scene.PlacedUnit;

/**
 * How a unit stands on the floor in one situation.
 *
 * @param patches contact patches in the frame of the body; empty if it does not stand on the floor
 * @param plane how they share; {@code null} if there are none
 */
record Footing(List<Rect> patches, @Nullable PressurePlane plane) {
    private static final Footing NONE = new Footing(List.of(), null);

    private record Both(Footing road, Footing station) {
        static Both of(PlacedUnit unit) {
            Footing road = make(unit, Situation.ON_THE_ROAD);
            boolean same = unit.place(Situation.ON_THE_ROAD).equals(unit.place(Situation.ON_STATION));
            return new Both(road, same ? road : make(unit, Situation.ON_STATION));
        }
    }

    /** The footing of a unit, kept with it. */
    static Footing of(PlacedUnit unit, Situation situation) {
        Both both = unit.derived(Both.class, Both::of);
        return situation == Situation.ON_THE_ROAD ? both.road() : both.station();
    }

    /** One patch. */
    static Footing on(Rect patch) {
        List<Rect> patches = List.of(patch);
        return new Footing(patches, new PressurePlane(patches));
    }

    private static Footing make(PlacedUnit unit, Situation situation) {
        if (unit.place(situation).surface() != Surface.FLOOR) {
            return NONE;
        }
        Pose pose = unit.pose(situation);
        List<Rect> patches = new ArrayList<>();
        for (Rect print : unit.item().prints()) {
            patches.add(Rect.of(pose.apply(print.at(0, 0), unit.item().size())));
        }
        return patches.isEmpty() ? NONE : new Footing(List.copyOf(patches), new PressurePlane(patches));
    }
}
