package org.shelterwright.solver.fit.planted;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.shelterwright.catalog.item.ClearZone;
import org.shelterwright.catalog.item.Fixing;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Material;
import org.shelterwright.catalog.item.Mounting;
import org.shelterwright.catalog.item.Presence;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Solid;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;

/** The items of planted fits (mm). Invented data, for measuring only. */
final class PlantedItem {
    /** Depth of the service zone in front of a unit on the floor; two face each other across the aisle and share it. */
    static final int SERVICE = 500;
    /** Thickness of the sides of a table. */
    static final int SIDE = 50;

    private static final int INSET = 50;

    private PlantedItem() {}

    /** A unit that stands on the floor, bolted at its four corners, with a service zone in front. */
    static Item onFloor(String id, int depth, int width, int height) {
        Mounting mounting = new Mounting(Set.of(Surface.FLOOR), null, null, false);
        return item(id, Size.ofMm(depth, width, height), List.of(), true, floorFixings(depth, width), mounting);
    }

    /** The same with a space for knees between its sides, up to a height. */
    static Item table(String id, int depth, int width, int height, int knees) {
        List<Solid> solids = List.of(
                new Solid("right side", Box.ofMm(0, 0, 0, depth, SIDE, knees), Presence.ALWAYS),
                new Solid("left side", Box.ofMm(0, width - SIDE, 0, depth, width, knees), Presence.ALWAYS),
                new Solid("top", Box.ofMm(0, 0, knees, depth, width, height), Presence.ALWAYS));
        Mounting mounting = new Mounting(Set.of(Surface.FLOOR), null, null, false);
        return item(id, Size.ofMm(depth, width, height), solids, true, floorFixings(depth, width), mounting);
    }

    /** A unit that hangs on a wall, with its bottom between two heights. */
    static Item onWall(String id, int depth, int width, int height, int lowest, int highest) {
        Mounting mounting = new Mounting(Set.of(Surface.WALL), lowest * Lengths.MM, highest * Lengths.MM, false);
        List<Fixing> fixings = List.of(
                new Fixing("W1", Point.ofMm(0, 25, height - 25), Face.REAR, "M8", "8.8", null),
                new Fixing("W2", Point.ofMm(0, width - 25, height - 25), Face.REAR, "M8", "8.8", null));
        return item(id, Size.ofMm(depth, width, height), List.of(), false, fixings, mounting);
    }

    private static Item item(
            String id, Size size, List<Solid> solids, boolean served, List<Fixing> fixings, Mounting mounting) {
        Box front = size.box().face(Face.FRONT);
        Box service = new Box(
                front.x0(),
                front.y0(),
                0,
                front.x0() + SERVICE * Lengths.MM,
                front.y1(),
                Math.max(front.z1(), 1000 * Lengths.MM));
        return Item.named(
                        id,
                        "Planted " + id,
                        ItemKind.CABINET,
                        Material.PAINTED_SHEET,
                        size,
                        mounting,
                        MassData.of(20 + 150 * size.box().volumeM3(), size.box().centre(), MassBasis.CALCULATED))
                .solids(solids)
                .zones(
                        served
                                ? List.of(new ClearZone("front service", Purpose.SERVICE, service, Presence.ALWAYS))
                                : List.of())
                .fixings(fixings)
                .build();
    }

    private static List<Fixing> floorFixings(int depth, int width) {
        List<Fixing> fixings = new ArrayList<>();
        for (int x : new int[] {INSET, depth - INSET}) {
            for (int y : new int[] {INSET, width - INSET}) {
                String name = "F" + (fixings.size() + 1);
                fixings.add(new Fixing(name, Point.ofMm(x, y, 0), Face.BOTTOM, "M10", "8.8", null));
            }
        }
        return fixings;
    }
}
