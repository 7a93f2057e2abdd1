package org.shelterwright.solver.fit.planted;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.DrillZone;
import org.shelterwright.catalog.body.HoleGrid;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.body.Strength;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;

/** The body of planted fits. Invented data, for measuring only. */
final class PlantedBody {
    static final int WIDTH = 2200;
    static final int HEIGHT = 2000;
    private static final Strength STRENGTH = new Strength(8_000.0, 6_000.0, 20_000.0);
    private static final int PITCH_X = 25;
    private static final int PITCH_Y = 50;
    /** Holes along the body in one grid; a longer body has several. */
    private static final int MOST_COLUMNS = 2000;

    private PlantedBody() {}

    /** A body with an insert grid all over its floor, drillable side walls and a rear door (mm). */
    static Body of(int length) {
        Size inside = Size.ofMm(length, WIDTH, HEIGHT);
        List<DrillZone> walls = new ArrayList<>();
        for (Face face : List.of(Face.LEFT, Face.RIGHT)) {
            walls.add(new DrillZone(face + " wall", face, inside.box().face(face), List.of(), STRENGTH));
        }
        Opening door = new Opening(
                "rear door",
                Opening.Kind.DOOR,
                Face.REAR,
                Box.ofMm(0, WIDTH / 2 - 400, 0, 0, WIDTH / 2 + 400, HEIGHT - 100),
                true,
                null);
        return new Body(
                "planted-body",
                "Planted body",
                inside,
                inside.box().grown(60_000, 60_000, 60_000),
                List.of(),
                List.of(door),
                floor(length),
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

    private static List<HoleGrid> floor(int length) {
        List<HoleGrid> grids = new ArrayList<>();
        int columns = length / PITCH_X - 1;
        for (int first = 0; first < columns; first += MOST_COLUMNS) {
            grids.add(new HoleGrid(
                    "floor inserts " + (grids.size() + 1),
                    Face.BOTTOM,
                    Point.ofMm((first + 1) * PITCH_X, PITCH_Y, 0),
                    Axis.X,
                    PITCH_X * Lengths.MM,
                    Math.min(MOST_COLUMNS, columns - first),
                    PITCH_Y * Lengths.MM,
                    WIDTH / PITCH_Y - 1,
                    List.of(),
                    STRENGTH));
        }
        return grids;
    }
}
