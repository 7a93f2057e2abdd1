package org.shelterwright.app.desk.hand;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.body.Intrusion;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;

/**
 * Something that does not move in a drag and has faces: another unit, a wall, a wheel arch.
 *
 * @param box in the frame of the body; a wall is flat
 * @param kind what it catches as
 */
record Neighbour(String name, Box box, Catch.Kind kind) {
    /** All that does not move, without what the leader is mounted on. */
    static List<Neighbour> of(Moving moving) {
        List<Neighbour> found = new ArrayList<>();
        Box inside = moving.scene().body().inside().box();
        for (Face face : Face.values()) {
            found.add(new Neighbour(Wording.surface(face), inside.face(face), Catch.Kind.WALL));
        }
        for (Intrusion intrusion : moving.scene().body().intrusions()) {
            found.add(new Neighbour(intrusion.name(), intrusion.box(), Catch.Kind.WALL));
        }
        String host = moving.leader().place(moving.situation()).host();
        for (PlacedUnit unit : moving.scene().units()) {
            if (!moving.all().get(unit.index()) && !unit.id().equals(host)) {
                found.add(new Neighbour(unit.name(), filled(unit, moving.situation()), Catch.Kind.FACE));
            }
        }
        return found;
    }

    /** The least cuboid around what a unit fills in a situation: a chair that is folded on the road has other faces there. */
    static Box filled(PlacedUnit unit, Situation situation) {
        return unit.solids(situation).stream().reduce(Box::hull).orElseGet(() -> unit.outline(situation));
    }

    boolean wall() {
        return kind == Catch.Kind.WALL;
    }

    /** Whether it is an inside surface of the body. */
    boolean surface() {
        return wall() && box.flat();
    }

    /** Whether both share more than a line when seen along an axis. */
    boolean faces(Box other, Axis along) {
        for (Axis axis : Axis.values()) {
            if (axis != along && box.gap(other, axis) >= 0) {
                return false;
            }
        }
        return true;
    }
}
