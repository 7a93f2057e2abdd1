package org.shelterwright.app.desk.hand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Mounting;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.ledger.fit.PlacedSupport;
import org.shelterwright.layouts.ledger.fit.Rest;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** Moves a unit to another surface: to the nearest place there that it touches, and where its fixings land if one is near. */
public final class Remount {
    private static final Catching LANDING = new Catching(150, 0);

    private final Scene scene;
    private final Situation situation;
    private final PlacedUnit unit;

    /** @param situation the one in which it is moved */
    public Remount(Scene scene, PlacedUnit unit, Situation situation) {
        this.scene = scene;
        this.situation = situation;
        this.unit = unit;
    }

    public Place onFloor() {
        return landed(Surface.FLOOR, null, inside(unit.pose(situation), Axis.Z, 0));
    }

    public Place underRoof() {
        int height = unit.item().size().z();
        return landed(
                Surface.ROOF,
                null,
                inside(unit.pose(situation), Axis.Z, scene.body().inside().z() - height));
    }

    /**
     * On a wall.
     *
     * @param wall {@code null}: the nearest of those to which it may turn its back
     */
    public Place onWall(@Nullable Face wall) {
        List<Pose> poses = new ArrayList<>();
        for (QuarterTurn turn : QuarterTurn.values()) {
            Face face = turn.apply(Face.REAR);
            if (face == wall || wall == null && unit.item().turns().contains(turn)) {
                poses.add(atWall(turn, face));
            }
        }
        Pose nearest = poses.stream().min(Comparator.comparingLong(this::way)).orElseThrow();
        return landed(Surface.WALL, null, nearest);
    }

    /**
     * On or under another unit.
     *
     * @throws IllegalArgumentException with a sentence if that one has no support there
     */
    public Place at(PlacedUnit host, boolean under) {
        Surface surface = under ? Surface.UNDER_UNIT : Surface.ON_UNIT;
        PlacedUnit posed = posed(new Place(surface, host.id(), unit.pose(situation)));
        int height = unit.item().size().z();
        Pose now = unit.pose(situation);
        return PlacedSupport.of(host, situation).stream()
                .filter(support -> support.under() == under)
                .map(support -> on(support, posed, under ? support.level() - height : support.level()))
                .min(Comparator.comparingLong(this::way))
                .map(pose -> new Place(surface, host.id(), new Pose(pose.at(), now.yaw())))
                .orElseThrow(() -> new IllegalArgumentException(
                        host.name() + " has no support " + (under ? "on its underside." : "on its top.")));
    }

    private Pose on(PlacedSupport support, PlacedUnit posed, int level) {
        Point at = unit.pose(situation).at().with(Axis.Z, level);
        Box middle = Box.between(support.box().centre(), support.box().centre());
        Optional<Box> room = Rest.room(posed, situation, support).map(rect -> rect.at(level, level));
        Box within = room.orElseGet(() -> middle.moved(
                -unit.outline(situation).extent(Axis.X) / 2,
                -unit.outline(situation).extent(Axis.Y) / 2,
                0));
        return new Pose(
                new Point(Holes.clamped(within, Axis.X, at.x()), Holes.clamped(within, Axis.Y, at.y()), level),
                unit.pose(situation).yaw());
    }

    private Pose atWall(QuarterTurn turn, Face wall) {
        Pose turned = new Pose(unit.pose(situation).at(), turn);
        Box outline = turned.outline(unit.item().size());
        Mounting mounting = unit.item().mounting();
        int least = mounting.lowestAbove() == null ? 0 : mounting.lowestAbove();
        int most = mounting.highestAbove() == null ? Integer.MAX_VALUE : mounting.highestAbove();
        int z = Math.max(least, Math.min(most, outline.z0()));
        int at = wall.sign() > 0 ? scene.body().inside().along(wall.axis()) - outline.extent(wall.axis()) : 0;
        return inside(new Pose(turned.at().with(Axis.Z, z), turn), wall.axis(), at);
    }

    /** Within the body, with one coordinate given. */
    private Pose inside(Pose pose, Axis axis, int value) {
        Box outline = pose.outline(unit.item().size());
        Point at = pose.at();
        for (Axis each : Axis.values()) {
            int room = Math.max(0, scene.body().inside().along(each) - outline.extent(each));
            at = at.with(each, Math.max(0, Math.min(room, at.along(each))));
        }
        return new Pose(at.with(axis, value), pose.yaw());
    }

    private Place landed(Surface surface, @Nullable String host, Pose pose) {
        Place place = new Place(surface, host, pose);
        PlacedUnit posed = posed(place);
        Moving moving = Moving.of(scene.after(scene.layout().with(posed.placement())), Set.of(unit.id()), situation)
                .orElseThrow();
        return place.with(new Pose(new Snapping(moving, LANDING).landing(pose.at()), pose.yaw()));
    }

    private PlacedUnit posed(Place place) {
        Placement placement = unit.placement().with(situation, place);
        return scene.after(scene.layout().with(placement)).unit(unit.id()).orElseThrow();
    }

    private long way(Pose pose) {
        Point from = unit.outline(situation).centre();
        Point way = pose.outline(unit.item().size()).centre().minus(from);
        return (long) Math.abs(way.x()) + Math.abs(way.y()) + Math.abs(way.z());
    }
}
