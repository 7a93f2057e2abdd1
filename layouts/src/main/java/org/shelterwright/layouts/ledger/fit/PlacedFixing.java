package org.shelterwright.layouts.ledger.fit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Fixing;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.scene.PlacedUnit;

/**
 * A fixing of a placed unit, in the frame of the body.
 *
 * @param at where its axis meets the surface
 * @param face the face of the turned unit through which it leaves
 * @param slot axis of the body along which its hole is slotted; {@code null}: a round hole
 * @param intoHost true if it goes into the unit that carries this one, not into the body
 */
public record PlacedFixing(
        Fixing fixing, Point at, Face face, @Nullable Axis slot, boolean intoHost) {
    /**
     * The fixings that hold a unit where it is: those of its mounting face, and those of a face that no allowed surface
     * uses (braces). The fixings of another way of mounting it are left out, and so are those of a loose unit on
     * station.
     */
    public static List<PlacedFixing> of(PlacedUnit unit, Situation situation) {
        Item item = unit.item();
        List<PlacedFixing> placed = new ArrayList<>();
        if (item.mounting().loose() && situation == Situation.ON_STATION) {
            return placed;
        }
        Place place = unit.place(situation);
        Pose pose = place.pose();
        Face mount = MountFace.ofItem(place.surface());
        for (Fixing fixing : item.fixings()) {
            boolean ofMount = fixing.face() == mount;
            if (ofMount || isBrace(item, fixing)) {
                placed.add(new PlacedFixing(
                        fixing,
                        pose.apply(fixing.at(), item.size()),
                        pose.apply(fixing.face()),
                        fixing.slot() == null ? null : pose.yaw().apply(fixing.slot()),
                        ofMount && place.host() != null));
            }
        }
        return placed;
    }

    private static boolean isBrace(Item item, Fixing fixing) {
        for (Surface surface : item.mounting().surfaces()) {
            if (MountFace.ofItem(surface) == fixing.face()) {
                return false;
            }
        }
        return true;
    }
}
