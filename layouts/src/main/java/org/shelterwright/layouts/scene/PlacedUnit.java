package org.shelterwright.layouts.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.shelterwright.catalog.item.ClearZone;
import org.shelterwright.catalog.item.Fixing;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.MovablePart;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.inside.UnitMass;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;

/** A unit at its place, with everything that it fills or keeps free in the frame of the body. Immutable. */
public final class PlacedUnit {
    private final int index;
    private final UnitSpec spec;
    private final Item item;
    private final UnitMass mass;
    private final Placement placement;
    private final List<PlacedPort> wired;
    private final Shape station;
    private final Shape road;
    private final Kept kept = new Kept();

    private record Shape(Box outline, List<Box> solids, List<PlacedZone> zones, Box reach) {}

    PlacedUnit(int index, UnitSpec spec, Item item, UnitMass mass, List<WiredPorts.Wired> wired, Placement placement) {
        this.index = index;
        this.mass = mass;
        this.spec = spec;
        this.item = item;
        this.placement = placement;
        Pose pose = placement.in(Situation.ON_STATION).pose();
        this.wired = wired.stream()
                .map(port -> new PlacedPort(port.port(), port.plugRoom(), pose.apply(port.plugRoom(), item.size())))
                .toList();
        station = shape(Situation.ON_STATION);
        road = shape(Situation.ON_THE_ROAD);
    }

    /** Its number among the placed units of the scene, from zero. */
    public int index() {
        return index;
    }

    public String id() {
        return spec.id();
    }

    public String name() {
        return spec.name();
    }

    public UnitSpec spec() {
        return spec;
    }

    public Item item() {
        return item;
    }

    /** Its mass with what is in it, in the frame of its item; that of the item if nothing is known to be in it. */
    public MassData mass(Situation situation) {
        return mass.in(situation);
    }

    UnitMass mass() {
        return mass;
    }

    public Placement placement() {
        return placement;
    }

    public Place place(Situation situation) {
        return placement.in(situation);
    }

    public Pose pose(Situation situation) {
        return placement.in(situation).pose();
    }

    /** The least cuboid that holds its size. */
    public Box outline(Situation situation) {
        return in(situation).outline();
    }

    /** What it fills. */
    public List<Box> solids(Situation situation) {
        return in(situation).solids();
    }

    /** What it keeps free, sweeps of movable parts included. */
    public List<PlacedZone> zones(Situation situation) {
        return in(situation).zones();
    }

    /** Its ports that wires end at, on station. */
    public List<PlacedPort> wiredPorts() {
        return wired;
    }

    /** The least cuboid that holds its size, zones, fixings and plugs: beyond it, it meets no other unit. */
    public Box reach(Situation situation) {
        return in(situation).reach();
    }

    /** Whether the reaches of both overlap or touch in a situation: if in none, neither concerns the other. */
    public boolean meets(PlacedUnit other) {
        return station.reach().touches(other.station.reach()) || road.reach().touches(other.road.reach());
    }

    /** Whether it stands elsewhere, or is shaped otherwise, on the road than on station. */
    public boolean differsOnTheRoad() {
        return !station.equals(road);
    }

    /**
     * Something that limits need of this unit alone, made once and then kept with it, also in later scenes.
     *
     * @param type what it is; one value of each type is kept
     * @param maker makes it; may be called twice if two threads ask at once, so it must always make the same
     */
    public <T> T derived(Class<T> type, Function<PlacedUnit, T> maker) {
        return kept.get(type, () -> maker.apply(this));
    }

    private Shape in(Situation situation) {
        return situation == Situation.ON_STATION ? station : road;
    }

    private Shape shape(Situation situation) {
        Pose pose = placement.in(situation).pose();
        Box outline = pose.outline(item.size());
        List<Box> solids = item.solids(situation).stream()
                .map(box -> pose.apply(box, item.size()))
                .toList();
        List<PlacedZone> zones = new ArrayList<>();
        for (ClearZone zone : item.zones()) {
            if (zone.presence().in(situation)) {
                zones.add(new PlacedZone(this, zone.name(), zone.purpose(), pose.apply(zone.box(), item.size())));
            }
        }
        if (situation == Situation.ON_STATION) {
            for (MovablePart part : item.movableParts()) {
                zones.add(new PlacedZone(this, part.name(), Purpose.SWING, pose.apply(part.sweep(), item.size())));
            }
        }
        Box reach = outline;
        for (PlacedZone zone : zones) {
            reach = reach.hull(zone.box());
        }
        for (Fixing fixing : item.fixings()) {
            Point at = pose.apply(fixing.at(), item.size());
            reach = reach.hull(Box.between(at, at));
        }
        for (PlacedPort port : wired) {
            reach = reach.hull(pose.apply(port.ownPlugRoom(), item.size()));
        }
        return new Shape(outline, solids, List.copyOf(zones), reach);
    }
}
