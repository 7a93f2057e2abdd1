package org.shelterwright.solver.order.planted;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Material;
import org.shelterwright.catalog.item.Mounting;
import org.shelterwright.catalog.item.Presence;
import org.shelterwright.catalog.item.Solid;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.scene.Scene;

/**
 * A body that was filled one unit after the other: each goes straight in along x in the lane of the door, then sideways or up or
 * down until it touches. So the order is known without any search. Two linked rings may be planted among them, which no order can
 * bring in: at the far end before all others, or behind the door after them, where they shut others in.
 *
 * @param order ids of the units, as they were brought in; without the rings
 * @param rings ids of the two linked rings; empty if all can be brought in
 */
public record PlantedOrder(Layout layout, List<String> order, List<String> rings) {
    private static final int MM = 1000;
    private static final int DOOR = 900 * MM;
    private static final int WIDTH = 2300 * MM;
    private static final int HEIGHT = 2100 * MM;

    public Scene scene() {
        return Scene.of(layout, Rules.of(layout.brief(), List.of()));
    }

    /**
     * Plants a case.
     *
     * @param units number of units without the rings
     * @param impossible whether the rings are planted
     */
    public static PlantedOrder of(long seed, int units, boolean impossible) {
        return of(seed, units, impossible ? Rings.FAR : Rings.NONE);
    }

    /** Plants a case with the rings where it is said. */
    public static PlantedOrder of(long seed, int units, Rings rings) {
        return new Planting(new Random(seed), units, rings).plant();
    }

    /** Where two linked rings are. */
    public enum Rings {
        NONE,
        /** At the far end, where they hinder nobody. */
        FAR,
        /** Behind the door, after all others but those that would stand there: what does not come past them is shut in. */
        BEHIND_THE_DOOR
    }

    private static final class Planting {
        private final Random random;
        private final int units;
        private final Rings rings;
        private final int length;
        private final List<Box> taken = new ArrayList<>();
        private final Map<String, List<Box>> solids = new LinkedHashMap<>();

        Planting(Random random, int units, Rings rings) {
            this.random = random;
            this.units = units;
            this.rings = rings;
            this.length = (2500 + 300 * units) * MM;
        }

        PlantedOrder plant() {
            if (rings == Rings.FAR) {
                ring("ring-a", Axis.Z, length - 900 * MM, 200 * MM, 600 * MM, 500 * MM);
                ring("ring-b", Axis.Y, length - 650 * MM, 400 * MM, 400 * MM, 500 * MM);
            }
            List<String> order = new ArrayList<>();
            for (int tries = 0; order.size() < units && tries < 200 * units; tries++) {
                String id = "u" + order.size();
                if (drop(id)) {
                    order.add(id);
                }
            }
            if (rings == Rings.BEHIND_THE_DOOR) {
                Box room = new Box(20 * MM, 725 * MM, 200 * MM, 1720 * MM, 1575 * MM, 1600 * MM);
                while (taken.stream().anyMatch(room::overlaps)) {
                    taken.removeAll(solids.remove(order.remove(order.size() - 1)));
                }
                ring("ring-a", Axis.Z, 20 * MM, 725 * MM, 700 * MM, 850 * MM);
                ring("ring-b", Axis.Y, 320 * MM, 1100 * MM, 200 * MM, 1400 * MM);
            }
            return new PlantedOrder(layout(), order, rings == Rings.NONE ? List.of() : List.of("ring-a", "ring-b"));
        }

        /** A flat ring of four bars, square to an axis. */
        private void ring(String id, Axis square, int x, int y, int z, int side) {
            int bar = 100 * MM;
            List<Box> bars = new ArrayList<>();
            int far = side - bar;
            if (square == Axis.Z) {
                bars.add(new Box(0, 0, 0, side, bar, bar));
                bars.add(new Box(0, far, 0, side, side, bar));
                bars.add(new Box(0, bar, 0, bar, far, bar));
                bars.add(new Box(far, bar, 0, side, far, bar));
            } else {
                bars.add(new Box(0, 0, 0, side, bar, bar));
                bars.add(new Box(0, 0, far, side, bar, side));
                bars.add(new Box(0, 0, bar, bar, bar, far));
                bars.add(new Box(far, 0, bar, side, bar, far));
            }
            put(id, bars.stream().map(one -> one.moved(x, y, z)).toList());
        }

        /** Brings a unit in: along x in the door's lane, then along one other axis. */
        private boolean drop(String id) {
            int grain = random.nextInt(3) == 0 ? 1 : 25 * MM;
            Size size = new Size(size(grain), size(grain), size(grain));
            List<Box> parts = parts(size);
            int lane = (WIDTH - DOOR) / 2;
            int y = lane + grained(DOOR - size.y(), grain);
            int z = random.nextBoolean() ? 0 : grained(1900 * MM - size.z(), grain);
            Point at = new Point(-size.x() - 100 * MM, y, z);
            int reach = slide(parts, at, Axis.X, length - size.x() - at.x());
            int least = -at.x();
            if (reach < least) {
                return false;
            }
            int far = random.nextInt(12) == 0 ? least + grained(reach - least, grain) : reach;
            at = at.with(Axis.X, at.x() + far);
            if (random.nextInt(3) > 0) {
                Axis aside = random.nextInt(3) == 0 ? Axis.Z : Axis.Y;
                int wall = aside == Axis.Y ? WIDTH - size.y() : HEIGHT - size.z();
                boolean up = random.nextBoolean();
                int most = up ? wall - at.along(aside) : -at.along(aside);
                at = at.with(aside, at.along(aside) + slide(parts, at, aside, most));
            }
            Point end = at;
            put(id, parts.stream().map(part -> part.moved(end)).toList());
            return true;
        }

        /** How far parts slide along an axis before they touch something; the sign is that of the most. */
        private int slide(List<Box> parts, Point at, Axis axis, int most) {
            int way = most;
            for (Box part : parts) {
                Box moved = part.moved(at);
                Box swept = moved.swept(axis, most);
                for (Box other : taken) {
                    if (other.overlaps(swept)) {
                        int room = most > 0 ? other.low(axis) - moved.high(axis) : other.high(axis) - moved.low(axis);
                        way = most > 0 ? Math.min(way, Math.max(room, 0)) : Math.max(way, Math.min(room, 0));
                    }
                }
            }
            return way;
        }

        private List<Box> parts(Size size) {
            if (random.nextInt(3) > 0) {
                return List.of(size.box());
            }
            int top = size.z() / 3;
            return random.nextBoolean()
                    ? List.of(
                            new Box(0, 0, size.z() - top, size.x(), size.y(), size.z()),
                            new Box(0, 0, 0, size.x(), size.y() / 4, size.z() - top))
                    : List.of(
                            new Box(0, 0, 0, size.x(), size.y(), top),
                            new Box(0, 0, top, size.x() / 3, size.y(), size.z()));
        }

        private int size(int grain) {
            return Math.max(grain, (200 * MM + random.nextInt(500 * MM)) / grain * grain);
        }

        private int grained(int most, int grain) {
            return most <= 0 ? 0 : random.nextInt(most + 1) / grain * grain;
        }

        private void put(String id, List<Box> boxes) {
            solids.put(id, boxes);
            taken.addAll(boxes);
        }

        private Layout layout() {
            Map<String, Item> items = new LinkedHashMap<>();
            List<UnitSpec> specs = new ArrayList<>();
            Map<String, Placement> placements = new LinkedHashMap<>();
            List<String> ids = new ArrayList<>(solids.keySet());
            Collections.shuffle(ids, random);
            for (String id : ids) {
                Box hull = solids.get(id).stream().reduce(Box::hull).orElseThrow();
                items.put(id, item(id, hull));
                specs.add(new UnitSpec(id, id, id, "planted"));
                placements.put(id, Placement.of(id, Place.onFloor(Pose.at(hull.low()))));
            }
            Brief brief = Brief.named("planted", "Planted", "body").units(specs).build();
            return Layout.empty(brief, new Parts(body(), null, null, items)).withPlacements(placements);
        }

        private Item item(String id, Box hull) {
            List<Solid> own = new ArrayList<>();
            for (Box box : solids.get(id)) {
                Box moved = box.moved(-hull.x0(), -hull.y0(), -hull.z0());
                own.add(new Solid("s" + own.size(), moved, Presence.ALWAYS));
            }
            Size size = new Size(hull.extent(Axis.X), hull.extent(Axis.Y), hull.extent(Axis.Z));
            double kg = Math.max(1, Math.rint(200 * hull.volumeM3()));
            return Item.named(
                            id,
                            id,
                            ItemKind.OTHER,
                            Material.STEEL,
                            size,
                            new Mounting(Set.of(Surface.FLOOR), null, null, true),
                            MassData.of(kg, size.box().centre(), MassBasis.WEIGHED))
                    .solids(own)
                    .build();
        }

        private Body body() {
            int lane = (WIDTH - DOOR) / 2;
            return new Body(
                    "body",
                    "Body",
                    new Size(length, WIDTH, HEIGHT),
                    new Box(-60 * MM, -60 * MM, -100 * MM, length + 60 * MM, WIDTH + 60 * MM, HEIGHT + 60 * MM),
                    List.of(),
                    List.of(new Opening(
                            "rear door",
                            Opening.Kind.DOOR,
                            Face.REAR,
                            new Box(0, lane, 0, 0, lane + DOOR, 1900 * MM),
                            true,
                            null)),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    MassData.of(1000, new Point(length / 2, WIDTH / 2, 0), MassBasis.WEIGHED),
                    null,
                    null);
        }
    }
}
