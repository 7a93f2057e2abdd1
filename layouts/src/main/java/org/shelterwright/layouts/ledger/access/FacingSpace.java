package org.shelterwright.layouts.ledger.access;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Intrusion;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * The free space before an upright face, up to what faces it, on station. A space of a set width may be shifted along the
 * face as long as it covers the face, or lies within it if it is the narrower one; the deepest such space counts. Exact:
 * its depth changes only where its sides meet an obstacle. Loose seats are pushed aside.
 *
 * @param depth (µm)
 * @param unit what ends it; {@code null} if a wall or a part of the body does
 * @param name what ends it, such as "the left wall"
 * @param place the free space
 */
record FacingSpace(int depth, @Nullable PlacedUnit unit, String name, Box place) {
    private record Obstacle(
            int near, int low, int high, @Nullable PlacedUnit unit, String name) {}

    /** Which solids are not in the way. */
    @FunctionalInterface
    interface Exempt {
        boolean test(PlacedUnit unit, Box solid);
    }

    /**
     * Looks from a face.
     *
     * @param front flat cuboid in the plane that is looked from; its heights are those of the space
     * @param width of the space (µm)
     * @param owner its solids do not count
     */
    static FacingSpace before(Scene scene, PlacedUnit owner, Face face, Box front, int width, Exempt exempt) {
        Axis across = face.axis() == Axis.X ? Axis.Y : Axis.X;
        Box room = scene.body().inside().box();
        int at = front.low(face.axis());
        int wall = Math.max(0, face.sign() > 0 ? room.high(face.axis()) - at : at);
        List<Obstacle> obstacles = obstacles(scene, owner, face, front, exempt);
        int least = Math.max(0, Math.min(front.low(across), front.high(across) - width));
        int most = Math.min(room.high(across) - width, Math.max(front.low(across), front.high(across) - width));
        FacingSpace best = new FacingSpace(0, null, "the walls beside it", front);
        for (int start : starts(obstacles, width, least, most)) {
            Obstacle nearest = new Obstacle(wall, 0, 0, null, Wording.surface(face));
            for (Obstacle one : obstacles) {
                if (one.low() < start + width && one.high() > start && one.near() < nearest.near()) {
                    nearest = one;
                }
            }
            if (nearest.near() > best.depth() || best.place() == front) {
                int depth = nearest.near();
                Box place = placed(front, face, across, start, width, depth);
                best = new FacingSpace(depth, nearest.unit(), nearest.name(), place);
            }
        }
        return best;
    }

    /** The upright face of an outline beyond which a box reaches farthest. */
    static Face sideOf(Box outline, Box box) {
        Face farthest = Face.FRONT;
        int most = Integer.MIN_VALUE;
        for (Face face : List.of(Face.FRONT, Face.LEFT, Face.RIGHT, Face.REAR)) {
            int beyond = face.sign() > 0
                    ? box.high(face.axis()) - outline.high(face.axis())
                    : outline.low(face.axis()) - box.low(face.axis());
            if (beyond > most) {
                most = beyond;
                farthest = face;
            }
        }
        return farthest;
    }

    private static List<Obstacle> obstacles(Scene scene, PlacedUnit owner, Face face, Box front, Exempt exempt) {
        List<Obstacle> obstacles = new ArrayList<>();
        for (Intrusion intrusion : scene.body().intrusions()) {
            add(obstacles, face, front, intrusion.box(), null, intrusion.name());
        }
        for (PlacedUnit unit : scene.units()) {
            if (unit != owner && !Floor.pushedAside(unit)) {
                for (Box solid : unit.solids(Situation.ON_STATION)) {
                    if (!exempt.test(unit, solid)) {
                        add(obstacles, face, front, solid, unit, unit.name());
                    }
                }
            }
        }
        return obstacles;
    }

    private static void add(
            List<Obstacle> obstacles, Face face, Box front, Box solid, @Nullable PlacedUnit unit, String name) {
        Axis axis = face.axis();
        int at = front.low(axis);
        int near = face.sign() > 0 ? solid.low(axis) - at : at - solid.high(axis);
        int far = face.sign() > 0 ? solid.high(axis) - at : at - solid.low(axis);
        if (far > 0 && solid.z0() < front.z1() && solid.z1() > front.z0()) {
            Axis across = axis == Axis.X ? Axis.Y : Axis.X;
            obstacles.add(new Obstacle(Math.max(0, near), solid.low(across), solid.high(across), unit, name));
        }
    }

    /** Where the low side of the space may come to lie so that its depth is most; none if it does not fit the room. */
    private static List<Integer> starts(List<Obstacle> obstacles, int width, int least, int most) {
        List<Integer> starts = new ArrayList<>();
        if (least > most) {
            return starts;
        }
        starts.add(least);
        starts.add(most);
        for (Obstacle one : obstacles) {
            for (int start : new int[] {one.high(), one.low() - width}) {
                if (start > least && start < most) {
                    starts.add(start);
                }
            }
        }
        return starts;
    }

    private static Box placed(Box front, Face face, Axis across, int start, int width, int depth) {
        Box strip = across == Axis.Y
                ? new Box(front.x0(), start, front.z0(), front.x1(), start + width, front.z1())
                : new Box(start, front.y0(), front.z0(), start + width, front.y1(), front.z1());
        return strip.swept(face.axis(), face.sign() * depth);
    }
}
