package org.shelterwright.solver.fit.kernel;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Option;
import org.shelterwright.solver.fit.model.WireTerm;
import org.shelterwright.solver.fit.model.WireTerm.Foot;

/**
 * How long the wires come out (µm): a tenth of each length counts, and all of what it is above its greatest. A term counts once
 * both its slots are placed.
 */
final class WireCosts {
    private static final int SHARE = 10;

    private final WireTerm[] terms;
    private final int[][] ofSlot;
    private final @Nullable Foot[] first;
    private final @Nullable Foot[] second;
    private final long[] cost;
    private final @Nullable Foot[] probedFoot;
    private final long[] probed;
    private int probedSlot;
    private long total;

    WireCosts(FitProblem problem) {
        this.terms = problem.wires().toArray(WireTerm[]::new);
        this.first = new @Nullable Foot[terms.length];
        this.second = new @Nullable Foot[terms.length];
        this.probedFoot = new @Nullable Foot[terms.length];
        this.cost = new long[terms.length];
        this.probed = new long[terms.length];
        List<List<Integer>> lists = new ArrayList<>();
        for (int i = 0; i < problem.size(); i++) {
            lists.add(new ArrayList<>());
        }
        for (int t = 0; t < terms.length; t++) {
            lists.get(terms[t].a()).add(t);
            if (terms[t].b() < 0) {
                second[t] = terms[t].panel();
            } else {
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
            boolean isFirst = terms[t].a() == slot;
            Foot foot = terms[t].foot(isFirst, option.turn(), x, y, z);
            probedFoot[t] = foot;
            probed[t] = price(terms[t], foot, isFirst ? second[t] : first[t]);
            change += probed[t] - cost[t];
        }
        return change;
    }

    void commit() {
        for (int t : ofSlot[probedSlot]) {
            total += probed[t] - cost[t];
            cost[t] = probed[t];
            if (terms[t].a() == probedSlot) {
                first[t] = probedFoot[t];
            } else {
                second[t] = probedFoot[t];
            }
        }
    }

    void remove(int slot) {
        for (int t : ofSlot[slot]) {
            total -= cost[t];
            cost[t] = 0;
            if (terms[t].a() == slot) {
                first[t] = null;
            } else {
                second[t] = null;
            }
        }
    }

    private static long price(WireTerm term, @Nullable Foot one, @Nullable Foot other) {
        long length = term.length(one, other);
        return length / SHARE + Math.max(0, length - term.longest());
    }
}
