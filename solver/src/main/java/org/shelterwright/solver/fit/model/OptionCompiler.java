package org.shelterwright.solver.fit.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.Intrusion;
import org.shelterwright.catalog.item.Fixing;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Mounting;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.solver.fit.places.AnchorSet;
import org.shelterwright.solver.fit.places.FixingLattice;

/** Compiles the ways to mount one item: every surface and turn that it allows, with the anchors that remain. */
final class OptionCompiler {
    private final Body body;
    private final Size inside;

    OptionCompiler(Body body) {
        this.body = body;
        this.inside = body.inside();
    }

    /**
     * Compiles the options on floor, walls and roof.
     *
     * @param pin what stays as it is in {@code kept}
     * @param kept its place so far; {@code null} if it has none
     */
    List<Option> onBody(Item item, Pin pin, @Nullable Place kept) {
        List<Option> options = new ArrayList<>();
        for (Surface surface : List.of(Surface.FLOOR, Surface.WALL, Surface.ROOF)) {
            if (item.mounting().surfaces().contains(surface)) {
                for (QuarterTurn turn : turns(item)) {
                    if (kept == null || !pin.turn() || kept.surface() == surface && kept.pose().yaw() == turn) {
                        Option option = onBody(item, surface, turn, pin, kept);
                        if (option != null) {
                            options.add(option);
                        }
                    }
                }
            }
        }
        return options;
    }

    private @Nullable Option onBody(Item item, Surface surface, QuarterTurn turn, Pin pin, @Nullable Place kept) {
        Size size = turn.apply(item.size());
        Box domain = domain(item.mounting(), surface, turn, size);
        domain = domain == null || kept == null ? domain : pinned(domain, pin, kept.pose().at());
        if (domain == null) {
            return null;
        }
        List<Box> regions = item.mounting().loose()
                ? List.of(domain)
                : FixingLattice.narrow(domain, item, turn, body.hardPoints());
        List<Box> clear =
                regions.stream().filter(region -> !blocked(region, item, turn)).toList();
        return clear.isEmpty() ? null : make(item, surface, turn, AnchorSet.of(across(surface, turn), clear));
    }

    /** The option of a unit that stays where it is, whatever the limits say of it. */
    Option asItStands(Item item, Place kept, Point anchor, Option.@Nullable Berth berth) {
        AnchorSet only = AnchorSet.of(Axis.Z, List.of(Box.between(anchor, anchor)));
        AnchorSet[] sets = new AnchorSet[QuarterTurn.values().length];
        Arrays.fill(sets, only);
        return make(item, kept.surface(), kept.pose().yaw(), sets, berth);
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
        if (low > high) {
            return null;
        }
        Box all = new Box(0, 0, low, x, y, high);
        return all.face(turn.apply(Face.REAR));
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

    private boolean blocked(Box region, Item item, QuarterTurn turn) {
        if (!region.low().equals(region.high())) {
            return false;
        }
        for (Intrusion intrusion : body.intrusions()) {
            for (Situation situation : Situation.values()) {
                for (Box solid : item.solids(situation)) {
                    if (turn.apply(solid, item.size()).moved(region.low()).overlaps(intrusion.box())) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    static Axis across(Surface surface, QuarterTurn turn) {
        return surface == Surface.WALL ? turn.apply(Face.REAR).axis() : Axis.Z;
    }

    static List<QuarterTurn> turns(Item item) {
        return Arrays.stream(QuarterTurn.values()).filter(item.turns()::contains).toList();
    }

    private static Option make(Item item, Surface surface, QuarterTurn turn, AnchorSet anchors) {
        return make(item, surface, turn, new AnchorSet[] {anchors}, null);
    }

    static Option make(
            Item item, Surface surface, QuarterTurn turn, AnchorSet[] anchors, Option.@Nullable Berth berth) {
        Point centre = item.mass().centre();
        Point local = centre == null ? item.size().box().centre() : centre;
        return new Option(
                surface,
                turn,
                Shape.of(item, turn, Situation.ON_STATION),
                Shape.of(item, turn, Situation.ON_THE_ROAD),
                anchors,
                berth,
                holes(item, turn, berth),
                turn.apply(local, item.size()));
    }

    private static int[] holes(Item item, QuarterTurn turn, Option.@Nullable Berth berth) {
        if (berth != null || item.mounting().loose()) {
            return new int[0];
        }
        return item.fixings().stream()
                .map(Fixing::at)
                .map(at -> turn.apply(at, item.size()))
                .flatMap(at -> List.of(at.x(), at.y(), at.z()).stream())
                .mapToInt(Integer::intValue)
                .toArray();
    }
}
