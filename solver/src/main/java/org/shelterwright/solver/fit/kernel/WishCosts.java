package org.shelterwright.solver.fit.kernel;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Option;
import org.shelterwright.solver.fit.model.WishTerm;

/** How far the wishes are from being kept (µm). A term counts once both its slots are placed. */
final class WishCosts {
    private final State state;
    private final WishTerm[] terms;
    private final int[][] ofSlot;
    private final long[] cost;
    private final long[] probed;
    private int probedSlot;
    private long total;

    WishCosts(FitProblem problem, State state) {
        this.state = state;
        this.terms = problem.wishes().toArray(WishTerm[]::new);
        this.cost = new long[terms.length];
        this.probed = new long[terms.length];
        List<List<Integer>> lists = new ArrayList<>();
        for (int i = 0; i < problem.size(); i++) {
            lists.add(new ArrayList<>());
        }
        for (int t = 0; t < terms.length; t++) {
            lists.get(terms[t].a()).add(t);
            if (terms[t].b() != terms[t].a()) {
                lists.get(terms[t].b()).add(t);
            }
        }
        this.ofSlot = lists.stream()
                .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }

    long total() {
        return total;
    }

    /** Change of the total if a slot went to a place. */
    long probe(int slot, Option option, int x, int y, int z) {
        probedSlot = slot;
        long change = 0;
        for (int t : ofSlot[slot]) {
            WishTerm term = terms[t];
            int other = term.a() == slot ? term.b() : term.a();
            long shortfall = 0;
            if (other == slot) {
                shortfall = term.shortfall(option, x, y, z, option, x, y, z);
            } else if (state.placed[other]) {
                Option beside = state.option[other];
                int ox = state.x[other];
                int oy = state.y[other];
                int oz = state.z[other];
                shortfall = term.a() == slot
                        ? term.shortfall(option, x, y, z, beside, ox, oy, oz)
                        : term.shortfall(beside, ox, oy, oz, option, x, y, z);
            }
            probed[t] = shortfall;
            change += shortfall - cost[t];
        }
        return change;
    }

    void commit() {
        for (int t : ofSlot[probedSlot]) {
            total += probed[t] - cost[t];
            cost[t] = probed[t];
        }
    }

    void remove(int slot) {
        for (int t : ofSlot[slot]) {
            total -= cost[t];
            cost[t] = 0;
        }
    }
}
