package org.shelterwright.solver.load;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.fit.kernel.Dice;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Support;
import org.shelterwright.solver.load.model.Upright;

/**
 * Invented cargo in the manner of the published sets: kinds of chance sizes, then single pieces of chance kinds until the
 * room's volume is reached. Edges 25..120 in a room of 587 x 233 x 220; an edge may stand upright if that is stable enough
 * (after Bischoff and Ratcliff, Issues in the development of approaches to container loading, Omega 23 (1995); from memory).
 */
public final class Cargoes {
    public static final Size ROOM = new Size(587, 233, 220);

    private Cargoes() {}

    /** A problem of a number of kinds. */
    public static LoadProblem of(long seed, int kinds, Support support) {
        Dice dice = Dice.of(seed, kinds);
        int[][] edges = new int[kinds][];
        for (int k = 0; k < kinds; k++) {
            edges[k] = new int[] {30 + dice.below(91), 25 + dice.below(76), 20 + dice.below(61)};
        }
        int[] counts = new int[kinds];
        double volume = 0;
        while (true) {
            int k = dice.below(kinds);
            double piece = (double) edges[k][0] * edges[k][1] * edges[k][2];
            if (volume + piece > (double) ROOM.x() * ROOM.y() * ROOM.z()) {
                break;
            }
            volume += piece;
            counts[k]++;
        }
        List<CargoKind> list = new ArrayList<>();
        for (int k = 0; k < kinds; k++) {
            if (counts[k] > 0) {
                int[] e = edges[k];
                Upright upright = new Upright(Math.min(e[1], e[2]) * 2 > e[0], Math.min(e[0], e[2]) * 2 > e[1], true);
                list.add(CargoKind.of("K" + (k + 1), new Size(e[0], e[1], e[2]), upright, counts[k]));
            }
        }
        return LoadProblem.of(ROOM, list, support);
    }

    /** The same with masses from 100 to 300 kg for each m³ (lengths taken as centimetres). */
    public static LoadProblem heavy(long seed, int kinds) {
        LoadProblem plain = of(seed, kinds, Support.FULL);
        Dice dice = Dice.of(seed, -1);
        return plain.withKinds(plain.kinds().stream()
                .map(kind -> kind.withMass(Math.rint(kind.volume() * (100 + dice.below(201)) / 1e5) / 10))
                .toList());
    }
}
