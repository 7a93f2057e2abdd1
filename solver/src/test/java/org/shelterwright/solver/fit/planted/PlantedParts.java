package org.shelterwright.solver.fit.planted;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.DrillZone;
import org.shelterwright.catalog.body.HoleGrid;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.body.Strength;
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
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;

/** Body and items of planted fits. Invented data, for measuring only. */
final class PlantedParts {
    private static final Strength STRENGTH = new Strength(8_000.0, 6_000.0, null);
    private static final int INSET = 50;

    private PlantedParts() {}

    /** A body with an insert grid of 25 mm by 50 mm all over its floor, drillable side walls and a rear door (mm). */
    static Body body(int length, int width, int height) {
        Size inside = Size.ofMm(length, width, height);
        HoleGrid floor = new HoleGrid(
                "floor inserts",
                Face.BOTTOM,
                Point.ofMm(25, 50, 0),
                Axis.X,
                25 * Lengths.MM,
                length / 25 - 1,
                50 * Lengths.MM,
                width / 50 - 1,
                List.of(),
                STRENGTH);
        List<DrillZone> walls = new ArrayList<>();
        for (Face face : List.of(Face.LEFT, Face.RIGHT)) {
            walls.add(new DrillZone(
                    face + " wall", face, inside.box().face(face), List.of(), STRENGTH));
        }
        Opening door = new Opening(
                "rear door",
                Opening.Kind.DOOR,
                Face.REAR,
                Box.ofMm(0, width / 2 - 400, 0, 0, width / 2 + 400, height - 100),
                true,
                null);
        return new Body(
                "planted-body",
                "Planted body",
                inside,
                inside.box().grown(60_000, 60_000, 60_000),
                List.of(),
                List.of(door),
                List.of(floor),
                walls,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                MassData.of(900, inside.box().centre(), MassBasis.CALCULATED),
                null,
                null);
    }

    /** The item that fills a piece. */
    static Item item(String id, Cuts.Piece piece, double slack, SplittableRandom random) {
        boolean floor = piece.z0() == 0;
        int depth = floor ? PlantedFit.BANK - 50 * random.nextInt(4) : 200 + 25 * random.nextInt(9);
        int width = piece.length();
        int height = piece.height();
        Size size = Size.ofMm(depth, width, height);
        boolean knees = floor && width >= 500 && height >= 700 && random.nextInt(3) == 0;
        List<ClearZone> zones = floor
                ? List.of(new ClearZone(
                        "front service",
                        Purpose.SERVICE,
                        Box.ofMm(depth, 0, 0, depth + 500, width, Math.max(height, 1000)),
                        Presence.ALWAYS))
                : List.of();
        int play = (int) (1000 * slack);
        Mounting mounting = floor
                ? new Mounting(Set.of(Surface.FLOOR), null, null, false)
                : new Mounting(
                        Set.of(Surface.WALL),
                        Math.max(0, piece.z0() - play) * Lengths.MM,
                        (piece.z0() + play) * Lengths.MM,
                        false);
        return new Item(
                id,
                "Planted " + id,
                ItemKind.CABINET,
                Material.PAINTED_SHEET,
                size,
                knees ? kneeSpace(depth, width, height) : List.of(),
                zones,
                List.of(),
                floor ? floorFixings(depth, width) : wallFixings(width, height),
                mounting,
                Set.of(),
                MassData.of(20 + 150 * size.volumeM3(), size.box().centre(), MassBasis.CALCULATED),
                List.of(),
                List.of(),
                null,
                List.of(),
                null,
                List.of(),
                List.of(),
                null);
    }

    private static List<Solid> kneeSpace(int depth, int width, int height) {
        return List.of(
                new Solid("right side", Box.ofMm(0, 0, 0, depth, 50, height), Presence.ALWAYS),
                new Solid("left side", Box.ofMm(0, width - 50, 0, depth, width, height), Presence.ALWAYS),
                new Solid("top", Box.ofMm(0, 50, height - 50, depth, width - 50, height), Presence.ALWAYS));
    }

    private static List<Fixing> floorFixings(int depth, int width) {
        List<Fixing> fixings = new ArrayList<>();
        for (int x : new int[] {INSET, depth - INSET}) {
            for (int y : new int[] {INSET, width - INSET}) {
                fixings.add(new Fixing(
                        "F" + (fixings.size() + 1), Point.ofMm(x, y, 0), Face.BOTTOM, "M10", "8.8", null));
            }
        }
        return fixings;
    }

    private static List<Fixing> wallFixings(int width, int height) {
        return List.of(
                new Fixing("W1", Point.ofMm(0, 25, height - 25), Face.REAR, "M8", "8.8", null),
                new Fixing("W2", Point.ofMm(0, width - 25, height - 25), Face.REAR, "M8", "8.8", null));
    }
}
