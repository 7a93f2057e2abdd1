package org.shelterwright.solver.fit.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.Mounting;
import org.shelterwright.catalog.item.MovablePart;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.ledger.fit.PlacedFixing;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.fit.places.AnchorSet;
import org.shelterwright.solver.fit.places.FixingLattice;

/** Compiles the ways to mount one unit on the body: every surface and turn that it allows, with the anchors that remain. */
final class OptionCompiler {
    private static final Set<MovablePart.Kind> STAYING_OUT =
            Set.of(MovablePart.Kind.DRAWER, MovablePart.Kind.SLIDE_OUT, MovablePart.Kind.FLAP);

    private final Scene scene;
    private final Body body;
    private final Size inside;
    private final Posing posing;
    private final RoomForZones room;
    private final boolean zonesCount;

    /**
     * Prepares for a scene.
     *
     * @param zonesCount whether clear zones must have room in the body
     */
    OptionCompiler(Scene scene, boolean zonesCount) {
        this.scene = scene;
        this.body = scene.body();
        this.inside = body.inside();
        this.posing = new Posing(scene);
        this.room = new RoomForZones(body);
        this.zonesCount = zonesCount;
    }

    /**
     * Compiles the options on floor, walls and roof: those at which the clear zones have room, or all if none has any.
     *
     * @param present the situations in which the unit is there; the last one's fixings decide
     * @param pin what stays as it is in {@code kept}
     * @param kept its place so far; {@code null} if it has none
     */
    List<Option> onBody(UnitSpec unit, List<Situation> present, Pin pin, @Nullable Place kept) {
        List<Option> roomy = zonesCount ? onBody(unit, present, pin, kept, true) : List.of();
        return roomy.isEmpty() ? onBody(unit, present, pin, kept, false) : roomy;
    }

    private List<Option> onBody(
            UnitSpec unit, List<Situation> present, Pin pin, @Nullable Place kept, boolean roomForZones) {
        Situation governing = present.get(present.size() - 1);
        List<Option> options = new ArrayList<>();
        Item item = scene.layout().item(unit);
        for (Surface surface : List.of(Surface.FLOOR, Surface.WALL, Surface.ROOF)) {
            if (item.mounting().surfaces().contains(surface)) {
                for (QuarterTurn turn : turns(item)) {
                    if (kept == null
                            || !pin.turn()
                            || kept.surface() == surface && kept.pose().yaw() == turn) {
                        PlacedUnit posed = posing.at(unit, surface, null, turn);
                        List<Box> regions = regions(posed, surface, turn, governing, pin, kept);
                        if (roomForZones) {
                            regions = room.of(
                                    regions,
                                    present.stream()
                                            .map(situation -> Shape.of(posed, situation))
                                            .toList());
                        }
                        if (!regions.isEmpty()) {
                            Axis across = surface == Surface.WALL
                                    ? turn.apply(Face.REAR).axis()
                                    : Axis.Z;
                            AnchorSet[] anchors = {AnchorSet.of(across, regions)};
                            options.add(make(posed, surface, turn, governing, anchors, null));
                        }
                    }
                }
            }
        }
        return options;
    }

    private List<Box> regions(
            PlacedUnit posed, Surface surface, QuarterTurn turn, Situation governing, Pin pin, @Nullable Place kept) {
        Box domain = domain(
                posed.item().mounting(), surface, turn, turn.apply(posed.item().size()));
        domain = domain == null || kept == null
                ? domain
                : pinned(domain, pin, kept.pose().at());
        if (domain == null) {
            return List.of();
        }
        return FixingLattice.narrow(domain, PlacedFixing.of(posed, governing), body.hardPoints()).stream()
                .filter(region -> !blocked(region, posed))
                .toList();
    }

    /** The option of a unit that stays where it is, whatever the limits say of it. */
    Option asItStands(UnitSpec unit, Place kept, Point anchor, Option.@Nullable Berth berth, Situation governing) {
        AnchorSet only = AnchorSet.of(Axis.Z, List.of(Box.between(anchor, anchor)));
        AnchorSet[] sets = new AnchorSet[QuarterTurn.values().length];
        Arrays.fill(sets, only);
        QuarterTurn turn = kept.pose().yaw();
        return make(posing.at(unit, kept.surface(), kept.host(), turn), kept.surface(), turn, governing, sets, berth);
    }

    private @Nullable Box domain(Mounting mounting, Surface surface, QuarterTurn turn, Size size) {
        int x = inside.x() - size.x();
        int y = inside.y() - size.y();
        int z = inside.z() - size.z();
        if (x < 0 || y < 0 || z < 0) {
            return null;
        }
        if (surface == Surface.FLOOR) {
            return new Box(0, 0, 0, x, y, 0);
        }
        if (surface == Surface.ROOF) {
            return new Box(0, 0, z, x, y, z);
        }
        Integer least = mounting.lowestAbove();
        Integer greatest = mounting.highestAbove();
        int low = least == null ? 0 : least;
        int high = greatest == null ? z : Math.min(z, greatest);
        return low > high ? null : new Box(0, 0, low, x, y, high).face(turn.apply(Face.REAR));
    }

    static @Nullable Box pinned(Box domain, Pin pin, Point at) {
        Box left = domain;
        for (Axis axis : Axis.values()) {
            boolean kept = axis == Axis.X ? pin.x() : axis == Axis.Y ? pin.y() : pin.z();
            if (kept) {
                int value = at.along(axis);
                if (value < left.low(axis) || value > left.high(axis)) {
                    return null;
                }
                left = Box.between(left.low().with(axis, value), left.high().with(axis, value));
            }
        }
        return left;
    }

    /** Whether a single anchor puts a solid into a wheel arch or the like. */
    private boolean blocked(Box region, PlacedUnit posed) {
        return region.low().equals(region.high())
                && body.intrusions().stream()
                        .anyMatch(intrusion -> Arrays.stream(Situation.values())
                                .flatMap(situation -> posed.solids(situation).stream())
                                .anyMatch(solid -> solid.moved(region.low()).overlaps(intrusion.box())));
    }

    static List<QuarterTurn> turns(Item item) {
        return Arrays.stream(QuarterTurn.values())
                .filter(item.turns()::contains)
                .toList();
    }

    static Option make(
            PlacedUnit posed,
            Surface surface,
            QuarterTurn turn,
            Situation governing,
            AnchorSet[] anchors,
            Option.@Nullable Berth berth) {
        Item item = posed.item();
        Point centre = posed.mass(governing).centre();
        Point local = centre == null ? item.size().box().centre() : centre;
        int[] holes = PlacedFixing.of(posed, governing).stream()
                .filter(fixing -> !fixing.intoHost())
                .map(PlacedFixing::at)
                .flatMapToInt(at -> java.util.stream.IntStream.of(at.x(), at.y(), at.z()))
                .toArray();
        return new Option(
                surface,
                turn,
                turn.apply(item.size()),
                Shape.of(posed, Situation.ON_STATION),
                Shape.of(posed, Situation.ON_THE_ROAD),
                anchors,
                berth,
                holes,
                turn.apply(local, item.size()),
                item.kind() == ItemKind.SEAT,
                drawers(item, turn),
                controls(posed));
    }

    private static int[] drawers(Item item, QuarterTurn turn) {
        return Shape.flat(item.movableParts().stream()
                .filter(part -> STAYING_OUT.contains(part.kind()))
                .map(part -> turn.apply(part.sweep(), item.size()))
                .toList());
    }

    private static int[] controls(PlacedUnit posed) {
        boolean served = posed.zones(Situation.ON_STATION).stream().anyMatch(zone -> zone.purpose() == Purpose.SERVICE);
        return served
                ? posed.item().ports().stream().mapToInt(port -> port.at().z()).toArray()
                : new int[0];
    }
}
