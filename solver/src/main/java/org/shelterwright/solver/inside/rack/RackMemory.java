package org.shelterwright.solver.inside.rack;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.shelterwright.solver.inside.rack.RackProblem.Seat;

/**
 * The last arrangements that were found. Most layouts of one search ask the same of their racks, wherever these stand. It changes no
 * answer, only the time that it takes. Safe for several threads.
 */
public final class RackMemory {
    /** Layouts of one search differ in few ways that racks notice, and each is compared with all that is known. */
    private static final int MOST = 16;

    private final List<Entry> entries = new ArrayList<>();

    private record Entry(RackProblem problem, long seed, List<Seat> seats) {}

    /** The seats of the pieces of a problem, known or found now. */
    List<Seat> seats(RackProblem problem, long seed, Supplier<List<Seat>> search) {
        for (Entry entry : known()) {
            if (entry.seed() == seed && entry.problem().asksTheSameAs(problem)) {
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
}
