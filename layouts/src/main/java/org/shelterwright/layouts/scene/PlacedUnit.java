package org.shelterwright.layouts.scene;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.catalog.item.ClearZone;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MovablePart;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;

/** A unit at its place, with everything that it fills or keeps free in the frame of the body. Immutable. */
public final class PlacedUnit {
    private final int index;
    private final UnitSpec spec;
    private final Item item;
    private final Placement placement;
    private final Map<Situation, Shape> shapes = new EnumMap<>(Situation.class);

    private record Shape(Box outline, List<Box> solids, List<PlacedZone> zones, Box reach) {}

    PlacedUnit(int index, UnitSpec spec, Item item, Placement placement) {
        this.index = index;
        this.spec = spec;
        this.item = item;
        this.placement = placement;
        for (Situation situation : Situation.values()) {
            shapes.put(situation, shape(situation));
        }
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
        return shape0(situation).outline();
    }

    /** What it fills. */
    public List<Box> solids(Situation situation) {
        return shape0(situation).solids();
    }

    /** What it keeps free, sweeps of movable parts included. */
    public List<PlacedZone> zones(Situation situation) {
        return shape0(situation).zones();
    }

    /** The least cuboid that holds its solids and zones: beyond it, it meets no other unit. */
    public Box reach(Situation situation) {
        return shape0(situation).reach();
    }

    /** Whether it stands elsewhere, or is shaped otherwise, on the road than on station. */
    public boolean differsOnTheRoad() {
        return !shape0(Situation.ON_STATION).equals(shape0(Situation.ON_THE_ROAD));
    }

    private Shape shape0(Situation situation) {
        Shape shape = shapes.get(situation);
        if (shape == null) {
            throw new IllegalStateException("Every situation has a shape.");
        }
        return shape;
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
        return new Shape(outline, solids, List.copyOf(zones), reach);
    }
}
