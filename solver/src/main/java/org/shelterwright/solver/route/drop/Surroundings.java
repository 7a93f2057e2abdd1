package org.shelterwright.solver.route.drop;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.body.Intrusion;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.PlacedZone;
import org.shelterwright.layouts.scene.Scene;

/**
 * What a cable must go round, and where it should rather not be.
 *
 * @param room inside of the body
 * @param solids what no cable passes through: units on station and on the road, intrusions, door openings
 * @param zones where people, doors and drawers move
 * @param shunned where other cables run that this one is to keep away from
 */
public record Surroundings(Box room, List<Box> solids, List<Box> zones, List<Box> shunned) {
    /** How far into the room an opening is kept free altogether (µm). */
    private static final int SILL = 50 * Lengths.MM;

    /** How far before a way out cables are unwelcome (µm). */
    private static final int WAY = 600 * Lengths.MM;

    public Surroundings {
        solids = List.copyOf(solids);
        zones = List.copyOf(zones);
        shunned = List.copyOf(shunned);
    }

    public static Surroundings of(Scene scene) {
        Box room = scene.body().inside().box();
        List<Box> solids = new ArrayList<>();
        List<Box> zones = new ArrayList<>();
        scene.body().intrusions().stream().map(Intrusion::box).forEach(solids::add);
        for (Opening opening : scene.body().openings()) {
            solids.add(inward(opening, SILL, room));
            zones.add(inward(opening, WAY, room));
        }
        for (PlacedUnit unit : scene.units()) {
            solids.addAll(unit.solids(Situation.ON_STATION));
            if (unit.differsOnTheRoad()) {
                solids.addAll(unit.solids(Situation.ON_THE_ROAD));
            }
            unit.zones(Situation.ON_STATION).stream().map(PlacedZone::box).forEach(zones::add);
        }
        return new Surroundings(room, solids, zones, List.of());
    }

    /** The same for a cable that is to keep away from others. */
    public Surroundings shunning(List<Box> others) {
        return new Surroundings(room, solids, zones, others);
    }

    private static Box inward(Opening opening, int depth, Box room) {
        Axis axis = opening.wall().axis();
        int way = -opening.wall().sign() * Math.min(depth, room.extent(axis));
        return opening.area().swept(axis, way);
    }
}
