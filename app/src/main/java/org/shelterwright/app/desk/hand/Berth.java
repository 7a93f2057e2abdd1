package org.shelterwright.app.desk.hand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Mounting;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.ledger.fit.PlacedFixing;
import org.shelterwright.layouts.ledger.fit.PlacedSupport;
import org.shelterwright.layouts.ledger.fit.Rest;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.fit.places.FixingLattice;

/**
 * A way to mount a unit on station, with the low corners at which it touches and lands.
 *
 * @param posed the unit mounted so, with its low corner at the origin
 * @param region low corners: a single one where holes decide, else a cuboid
 */
record Berth(PlacedUnit posed, Box region) {
    /**
     * Every way that the item allows.
     *
     * @param turns turns to try
     */
    static List<Berth> of(Scene scene, UnitSpec unit, Set<QuarterTurn> turns) {
        List<Berth> found = new ArrayList<>();
        Item item = scene.layout().item(unit);
        for (Surface surface : new TreeSet<>(item.mounting().surfaces())) {
            for (QuarterTurn turn : turns) {
                if (surface == Surface.ON_UNIT || surface == Surface.UNDER_UNIT) {
                    onHosts(scene, unit, surface, turn, found);
                } else {
                    onBody(scene, unit, surface, turn, found);
                }
            }
        }
        return found;
    }

    Place at(Point low) {
        Place place = posed.place(Situation.ON_STATION);
        return place.with(new Pose(low, place.pose().yaw()));
    }

    private static void onBody(Scene scene, UnitSpec unit, Surface surface, QuarterTurn turn, List<Berth> found) {
        PlacedUnit posed = posed(scene, unit, surface, null, turn);
        Box domain = domain(
                scene.body().inside(),
                turn.apply(posed.item().size()),
                posed.item().mounting(),
                surface,
                turn);
        if (domain != null) {
            List<PlacedFixing> fixings = PlacedFixing.of(posed, Situation.ON_STATION);
            FixingLattice.narrow(domain, fixings, scene.body().hardPoints())
                    .forEach(region -> found.add(new Berth(posed, region)));
        }
    }

    private static void onHosts(Scene scene, UnitSpec unit, Surface surface, QuarterTurn turn, List<Berth> found) {
        for (PlacedUnit host : scene.units()) {
            for (PlacedSupport support : PlacedSupport.of(host, Situation.ON_STATION)) {
                if (support.under() == (surface == Surface.UNDER_UNIT)
                        && !host.id().equals(unit.id())) {
                    PlacedUnit posed = posed(scene, unit, surface, host.id(), turn);
                    int height = support.under() ? posed.item().size().z() : 0;
                    int level = support.level() - height;
                    Rest.room(posed, Situation.ON_STATION, support)
                            .flatMap(room -> inBody(scene, posed, room.at(level, level)))
                            .ifPresent(room -> found.add(new Berth(posed, room)));
                }
            }
        }
    }

    /** The part of a region of low corners at which a unit lies within the body. */
    private static Optional<Box> inBody(Scene scene, PlacedUnit posed, Box region) {
        Size inside = scene.body().inside();
        Box outline = posed.outline(Situation.ON_STATION);
        Point far = new Point(
                inside.x() - outline.extent(Axis.X),
                inside.y() - outline.extent(Axis.Y),
                inside.z() - outline.extent(Axis.Z));
        if (far.x() < 0 || far.y() < 0 || far.z() < 0) {
            return Optional.empty();
        }
        Box lows = Box.between(Point.ORIGIN, far);
        return Stream.of(Axis.values()).allMatch(axis -> region.gap(lows, axis) <= 0)
                ? Optional.of(region.intersection(lows))
                : Optional.empty();
    }

    private static @Nullable Box domain(Size inside, Size size, Mounting mounting, Surface surface, QuarterTurn turn) {
        int x = inside.x() - size.x();
        int y = inside.y() - size.y();
        int z = inside.z() - size.z();
        if (x < 0 || y < 0 || z < 0) {
            return null;
        }
        int low = Optional.ofNullable(mounting.lowestAbove()).orElse(0);
        int high = Math.min(z, Optional.ofNullable(mounting.highestAbove()).orElse(z));
        return switch (surface) {
            case FLOOR -> new Box(0, 0, 0, x, y, 0);
            case ROOF -> new Box(0, 0, z, x, y, z);
            default -> low > high ? null : new Box(0, 0, low, x, y, high).face(turn.apply(Face.REAR));
        };
    }

    private static PlacedUnit posed(
            Scene scene, UnitSpec unit, Surface surface, @Nullable String host, QuarterTurn turn) {
        Place place = new Place(surface, host, new Pose(Point.ORIGIN, turn));
        return scene.after(scene.layout().with(Placement.of(unit.id(), place)))
                .unit(unit.id())
                .orElseThrow();
    }
}
