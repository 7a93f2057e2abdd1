package org.shelterwright.solver.inside.rack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import org.shelterwright.solver.inside.rack.RackProblem.Seat;

/**
 * The last arrangements that were found. Most layouts of one search ask the same of their racks, wherever these stand. It changes no
 * answer, only the time that it takes. Safe for several threads.
 */
public final class RackMemory {
    private static final int MOST = 16;

    private final List<Entry> entries = new ArrayList<>();

    private record Entry(RackProblem problem, long seed, List<Seat> seats) {}

    /** The seats of the pieces of a problem, known or found now. */
    List<Seat> seats(RackProblem problem, long seed, Supplier<List<Seat>> search) {
        for (Entry entry : known()) {
            if (entry.seed() == seed && same(entry.problem(), problem)) {
                return entry.seats();
            }
        }
        List<Seat> found = List.copyOf(search.get());
        keep(new Entry(problem, seed, found));
        return found;
    }

    private synchronized List<Entry> known() {
        return List.copyOf(entries);
    }

    private synchronized void keep(Entry entry) {
        entries.add(entry);
        if (entries.size() > MOST) {
            entries.remove(0);
        }
    }

    private static boolean same(RackProblem one, RackProblem other) {
        if (one.pieces().size() != other.pieces().size()
                || one.bays().size() != other.bays().size()) {
            return false;
        }
        for (int i = 0; i < one.pieces().size(); i++) {
            RackPiece a = one.pieces().get(i);
            RackPiece b = other.pieces().get(i);
            if (a.kind() != b.kind()
                    || a.units() != b.units()
                    || a.grams() != b.grams()
                    || !Arrays.deepEquals(a.costs(), b.costs())) {
                return false;
            }
        }
        for (int i = 0; i < one.bays().size(); i++) {
            RackBayRoom a = one.bays().get(i);
            RackBayRoom b = other.bays().get(i);
            if (a.units() != b.units()
                    || a.roomGrams() != b.roomGrams()
                    || a.openCost() != b.openCost()
                    || !Arrays.equals(a.blocked(), b.blocked())) {
                return false;
            }
        }
        return true;
    }
}
