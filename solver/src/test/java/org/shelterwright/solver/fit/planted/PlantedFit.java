package org.shelterwright.solver.fit.planted;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;

/**
 * A brief with a known solution. Two banks along the side walls of a body are cut into pieces; each piece, shortened by
 * the slack, is a unit: on the floor with a service zone in the aisle and bolts on a hole pitch, or on the wall above.
 * Every third larger floor unit has a knee space.
 *
 * @param question the brief with nothing placed
 * @param solution the same with every unit where it was cut
 */
public record PlantedFit(Layout question, Layout solution) {
    static final int WIDTH = 2200;
    static final int HEIGHT = 2000;
    static final int BANK = 600;
    private static final int LENGTH_A_UNIT = 180;

    /**
     * Plants a fit.
     *
     * @param seed the same seed plants the same fit
     * @param units number of units, at least 4
     * @param slack share of each bank's length that stays free, such as 0.1
     */
    public static PlantedFit of(long seed, int units, double slack) {
        SplittableRandom random = new SplittableRandom(seed * 1000 + units);
        int length = Math.max(1500, units * LENGTH_A_UNIT / Cuts.STEP * Cuts.STEP);
        Body body = PlantedParts.body(length, WIDTH, HEIGHT);
        Map<String, Item> items = new LinkedHashMap<>();
        Map<String, Placement> placements = new LinkedHashMap<>();
        List<UnitSpec> specs = new ArrayList<>();
        for (int bank = 0; bank < 2; bank++) {
            int count = bank == 0 ? units / 2 : units - units / 2;
            for (Cuts.Piece piece : Cuts.of(length, HEIGHT - 50, count, random)) {
                String id = "unit-" + (specs.size() + 1);
                Item item = PlantedParts.item(id + "-item", shortened(piece, slack), slack, random);
                items.put(item.id(), item);
                specs.add(new UnitSpec(id, "Unit " + (specs.size() + 1), item.id(), "planted"));
                placements.put(id, Placement.of(id, place(bank, piece, item)));
            }
        }
        Collections.shuffle(specs, new Random(seed));
        Brief brief = new Brief(
                "planted-" + seed,
                "Planted",
                body.id(),
                null,
                null,
                specs,
                0,
                List.of(),
                List.of(),
                Map.of(),
                List.of(),
                null);
        Layout question = Layout.empty(brief, new Parts(body, null, null, items));
        return new PlantedFit(question, question.withPlacements(placements));
    }

    private static Cuts.Piece shortened(Cuts.Piece piece, double slack) {
        int length = (int) (piece.length() * (1 - slack)) / Cuts.STEP * Cuts.STEP;
        int height = piece.z0() == 0 ? piece.height() : (int) (piece.height() * (1 - slack));
        return new Cuts.Piece(piece.x0(), piece.z0(), piece.x0() + length, piece.z0() + height);
    }

    private static Place place(int bank, Cuts.Piece piece, Item item) {
        int x = piece.x0() * Lengths.MM;
        int z = piece.z0() * Lengths.MM;
        int y = bank == 0 ? 0 : WIDTH * Lengths.MM - item.size().x();
        QuarterTurn turn = bank == 0 ? QuarterTurn.R90 : QuarterTurn.R270;
        Pose pose = new Pose(new Point(x, y, z), turn);
        return z == 0
                ? Place.onFloor(pose)
                : new Place(org.shelterwright.catalog.item.Surface.WALL, null, pose);
    }
}
