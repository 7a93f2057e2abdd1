package org.shelterwright.app.desk.hand;

import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.edit.PutUnits;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.scene.PlacedUnit;

/** Turns units that move together about the middle of their common outline, so that they keep their places to each other. */
public final class Turning {
    private Turning() {}

    /**
     * The change that turns units.
     *
     * @param by from x to y
     * @throws IllegalArgumentException if one hangs on a wall or is pinned
     */
    public static PutUnits of(Moving moving, QuarterTurn by) {
        Situation situation = moving.situation();
        Box all = moving.leader().outline(situation);
        for (PlacedUnit unit : moving.units()) {
            all = all.hull(unit.outline(situation));
            if (unit.place(situation).surface() == Surface.WALL) {
                throw new IllegalArgumentException(unit.name()
                        + " hangs on a wall, and turned it would leave it. Mount it on another wall instead.");
            }
            if (unit.placement().pin().turn()) {
                throw new IllegalArgumentException(unit.name() + " is pinned in its turn. Unpin it first.");
            }
        }
        Box hull = all;
        String order = by == QuarterTurn.R270 ? "Turn right" : by == QuarterTurn.R90 ? "Turn left" : "Turn about";
        return moving.put(order, unit -> turned(unit, situation, hull, by));
    }

    /** The middle may lie on half a micrometre: rounding down for all alike keeps them together. */
    private static Place turned(PlacedUnit unit, Situation situation, Box hull, QuarterTurn by) {
        Place place = unit.place(situation);
        Box outline = unit.outline(situation);
        long twiceX = (long) hull.x0() + hull.x1();
        long twiceY = (long) hull.y0() + hull.y1();
        Point at = place.pose().at();
        long x = at.x();
        long y = at.y();
        switch (by) {
            case R90 -> {
                x = Math.floorDiv(twiceX + twiceY - 2L * outline.y1(), 2);
                y = Math.floorDiv(twiceY - twiceX + 2L * outline.x0(), 2);
            }
            case R180 -> {
                x = twiceX - outline.x1();
                y = twiceY - outline.y1();
            }
            case R270 -> {
                x = Math.floorDiv(twiceX - twiceY + 2L * outline.y0(), 2);
                y = Math.floorDiv(twiceY + twiceX - 2L * outline.x1(), 2);
            }
            default -> {}
        }
        Point low = new Point((int) x, (int) y, at.z());
        return place.with(new Pose(low, place.pose().yaw().plus(by)));
    }
}
