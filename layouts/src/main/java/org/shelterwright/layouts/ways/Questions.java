package org.shelterwright.layouts.ways;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.Bringing;
import org.shelterwright.catalog.item.PartOff;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Solid;
import org.shelterwright.catalog.sliding.Moving;
import org.shelterwright.catalog.sliding.Obstacle;
import org.shelterwright.catalog.sliding.TiltQuery;
import org.shelterwright.catalog.sliding.WayQuery;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** Makes the questions for the ways of units, and keeps those past other units. Not for several threads. */
final class Questions {
    /** Room outside beyond what a unit needs (µm). */
    private static final int ROOM = 500 * Lengths.MM;

    private final Scene scene;
    private final Map<Key, Moving> known = new HashMap<>();

    private record Key(int unit, String opening, Mode mode, int part) {}

    Questions(Scene scene) {
        this.scene = scene;
    }

    /** The way of a unit past all others; of those that are gone it is told when it is asked. */
    Moving of(PlacedUnit unit, Opening opening, Mode mode) {
        return known.computeIfAbsent(
                new Key(unit.index(), opening.name(), mode, -1), any -> make(unit, opening, mode, scene.units()));
    }

    /** The same in the body with nothing else in it. */
    Moving bare(PlacedUnit unit, Opening opening, Mode mode) {
        return make(unit, opening, mode, List.of());
    }

    /**
     * The way of a part that came off a unit, with the unit at its place, and the parts before this one on it again.
     *
     * @param bare whether nothing else is in the body
     */
    Moving part(PlacedUnit unit, Opening opening, int part, boolean bare) {
        return bare
                ? makePart(unit, opening, part, List.of())
                : known.computeIfAbsent(
                        new Key(unit.index(), opening.name(), Mode.AS_IT_IS, part),
                        any -> makePart(unit, opening, part, scene.units()));
    }

    private Moving make(PlacedUnit unit, Opening opening, Mode mode, List<PlacedUnit> others) {
        List<Box> solids = mode.apart() ? rest(unit, 0) : unit.solids(Situation.ON_STATION);
        List<Obstacle> obstacles = obstacles(unit, opening, others);
        Box region = region(scene.body(), opening, hull(solids));
        Box target = target(scene.body(), opening, region);
        Face side = mode.lyingOn();
        return side == null
                ? new WayQuery(solids, obstacles, region, target, true)
                : new TiltQuery(solids, unit.pose(Situation.ON_STATION).apply(side), obstacles, region, target);
    }

    private Moving makePart(PlacedUnit unit, Opening opening, int part, List<PlacedUnit> others) {
        List<Box> solids = solids(unit, Set.copyOf(parts(unit).get(part).solids()), true);
        List<Obstacle> obstacles = obstacles(unit, opening, others);
        rest(unit, part).forEach(box -> obstacles.add(new Obstacle(box, Obstacle.FIXED)));
        Box region = region(scene.body(), opening, hull(solids));
        return new WayQuery(solids, obstacles, region, target(scene.body(), opening, region), true);
    }

    /** The parts that come off and fill something. */
    static List<PartOff> parts(PlacedUnit unit) {
        Bringing bringing = unit.item().bringing();
        return bringing == null
                ? List.of()
                : bringing.partsOff().stream()
                        .filter(part -> !part.solids().isEmpty())
                        .toList();
    }

    /** What a unit fills with the first parts on and the others off. */
    private static List<Box> rest(PlacedUnit unit, int on) {
        Set<String> off = new HashSet<>();
        parts(unit).stream().skip(on).forEach(part -> off.addAll(part.solids()));
        return solids(unit, off, false);
    }

    private static List<Box> solids(PlacedUnit unit, Set<String> names, boolean named) {
        return unit.item().solids().stream()
                .filter(solid -> solid.presence().in(Situation.ON_STATION) && names.contains(solid.name()) == named)
                .map(Solid::box)
                .map(box ->
                        unit.pose(Situation.ON_STATION).apply(box, unit.item().size()))
                .toList();
    }

    private static Box hull(List<Box> solids) {
        return solids.stream().reduce(Box::hull).orElseThrow();
    }

    private List<Obstacle> obstacles(PlacedUnit unit, Opening opening, List<PlacedUnit> others) {
        List<Obstacle> obstacles = new ArrayList<>();
        Shell.solids(scene.body(), opening).forEach(box -> obstacles.add(new Obstacle(box, Obstacle.FIXED)));
        for (PlacedUnit other : others) {
            if (other != unit) {
                other.solids(Situation.ON_STATION).forEach(box -> obstacles.add(new Obstacle(box, other.index())));
            }
        }
        return obstacles;
    }

    /** Inside and outside of the body as far as a unit may be on its way; no lower than the floor but through the floor. */
    private static Box region(Body body, Opening opening, Box unit) {
        int longest = Math.max(unit.extent(Axis.X), Math.max(unit.extent(Axis.Y), unit.extent(Axis.Z))) * 3 / 2;
        Box o = body.outside();
        int out = longest + ROOM;
        Face wall = opening.wall();
        int low = wall == Face.BOTTOM ? o.z0() - out : Math.min(0, unit.z0());
        int high = wall == Face.TOP ? o.z1() + out : body.inside().z();
        return new Box(o.x0() - out, o.y0() - out, low, o.x1() + out, o.y1() + out, high);
    }

    private static Box target(Body body, Opening opening, Box region) {
        Box o = body.outside();
        return switch (opening.wall()) {
            case REAR -> new Box(region.x0(), region.y0(), region.z0(), o.x0(), region.y1(), region.z1());
            case FRONT -> new Box(o.x1(), region.y0(), region.z0(), region.x1(), region.y1(), region.z1());
            case RIGHT -> new Box(region.x0(), region.y0(), region.z0(), region.x1(), o.y0(), region.z1());
            case LEFT -> new Box(region.x0(), o.y1(), region.z0(), region.x1(), region.y1(), region.z1());
            case TOP -> new Box(region.x0(), region.y0(), o.z1(), region.x1(), region.y1(), region.z1());
            case BOTTOM -> new Box(region.x0(), region.y0(), region.z0(), region.x1(), region.y1(), o.z0());
        };
    }
}
