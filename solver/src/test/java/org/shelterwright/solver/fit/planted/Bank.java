package org.shelterwright.solver.fit.planted;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.layout.Place;

/** The units along one side wall, each where it was cut. */
final class Bank {
    /** Depth of a bank (mm). */
    static final int DEPTH = 600;
    /** Height that is cut; above it, 50 mm stay free (mm). */
    static final int HEIGHT = PlantedBody.HEIGHT - 50;

    /** How the ids of items end that stand in the knee space of another. */
    static final String GUEST = "-guest";

    private static final int TABLE_LENGTH = 450;
    private static final int TABLE_HEIGHT = 600;
    private static final int KNEES = 700;

    private final boolean right;
    private final double slack;
    private final SplittableRandom random;
    private final List<Standing> standing = new ArrayList<>();

    /** A unit at its place in the known solution. */
    record Standing(Item item, Place place) {}

    private Bank(boolean right, double slack, SplittableRandom random) {
        this.right = right;
        this.slack = slack;
        this.random = random;
    }

    /**
     * Plants one bank.
     *
     * @param right whether it lies along the right wall
     * @param length length of the body (mm)
     * @param count number of units; about one in ten stands in the knee space of another
     * @param prefix what the ids of its items begin with
     */
    static List<Standing> plant(
            boolean right, int length, int count, double slack, String prefix, SplittableRandom random) {
        Bank bank = new Bank(right, slack, random);
        for (int guests = count / 10; ; guests--) {
            List<Cuts.Piece> cut = Cuts.of(length, HEIGHT, count - guests, random);
            List<Cuts.Piece> pieces = Shortening.of(cut, (long) length * PlantedBody.HEIGHT, slack);
            List<Cuts.Piece> tables = pieces.stream()
                    .filter(piece ->
                            piece.z0() == 0 && piece.length() >= TABLE_LENGTH && piece.height() >= TABLE_HEIGHT)
                    .sorted(Comparator.comparingInt(Cuts.Piece::length).reversed())
                    .toList();
            if (tables.size() >= guests) {
                for (Cuts.Piece piece : pieces) {
                    int table = tables.indexOf(piece);
                    bank.add(
                            prefix,
                            piece,
                            table >= 0 && (table < guests || table % 3 == 0),
                            table >= 0 && table < guests);
                }
                return bank.standing;
            }
        }
    }

    private void add(String prefix, Cuts.Piece piece, boolean table, boolean guest) {
        String id = prefix + (standing.size() + 1);
        if (piece.z0() > 0) {
            int play = (int) (1000 * slack) / Cuts.STEP * Cuts.STEP;
            int depth = 200 + 25 * random.nextInt(9);
            stand(
                    PlantedItem.onWall(
                            id,
                            depth,
                            piece.length(),
                            piece.height(),
                            Math.max(0, piece.z0() - play),
                            piece.z0() + play),
                    piece.x0(),
                    piece.z0());
            return;
        }
        int depth = DEPTH - 50 * random.nextInt(4);
        if (!table) {
            stand(PlantedItem.onFloor(id, depth, piece.length(), piece.height()), piece.x0(), 0);
            return;
        }
        int knees = Math.min(KNEES, piece.height() - 50);
        stand(PlantedItem.table(id, depth, piece.length(), piece.height(), knees), piece.x0(), 0);
        if (guest) {
            int free = piece.length() - 2 * PlantedItem.SIDE;
            int width = (int) (free * (1 - slack)) / Cuts.STEP * Cuts.STEP;
            stand(PlantedItem.onFloor(id + GUEST, depth, width, knees - 50), piece.x0() + PlantedItem.SIDE, 0);
        }
    }

    private void stand(Item item, int x, int z) {
        int y = right ? 0 : PlantedBody.WIDTH * Lengths.MM - item.size().x();
        QuarterTurn turn = right ? QuarterTurn.R90 : QuarterTurn.R270;
        Pose pose = new Pose(new Point(x * Lengths.MM, y, z * Lengths.MM), turn);
        boolean wall = item.mounting().surfaces().contains(Surface.WALL);
        standing.add(new Standing(item, wall ? new Place(Surface.WALL, null, pose) : Place.onFloor(pose)));
    }
}
