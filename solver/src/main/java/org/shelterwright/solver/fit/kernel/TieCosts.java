package org.shelterwright.solver.fit.kernel;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Option;
import org.shelterwright.solver.fit.model.TieTerm;
import org.shelterwright.solver.fit.model.TieTerm.Foot;

/**
 * How long the ties come out (µm): a share of each length is soft, and what it is above its greatest lacks like any other limit. A tie
 * counts once both its slots are placed.
 */
final class TieCosts {
    private static final int SHARE = 50;

    private final TieTerm[] terms;
    private final int[][] ofSlot;
    private final @Nullable Foot[] first;
    private final @Nullable Foot[] second;
    private final long[] soft;
    private final long[] over;
    private final @Nullable Foot[] probedFoot;
    private final long[] probedSoft;
    private final long[] probedOver;
    private int probedSlot;
    private long softTotal;
    private long overTotal;
    private long softChange;
    private long overChange;

    TieCosts(FitProblem problem) {
        this.terms = problem.ties().toArray(TieTerm[]::new);
        this.first = new @Nullable Foot[terms.length];
        this.second = new @Nullable Foot[terms.length];
        this.probedFoot = new @Nullable Foot[terms.length];
        this.soft = new long[terms.length];
        this.over = new long[terms.length];
        this.probedSoft = new long[terms.length];
        this.probedOver = new long[terms.length];
        List<List<Integer>> lists = new ArrayList<>();
        for (int i = 0; i < problem.size(); i++) {
            lists.add(new ArrayList<>());
        }
        for (int t = 0; t < terms.length; t++) {
            lists.get(terms[t].a()).add(t);
            if (terms[t].b() < 0) {
                second[t] = terms[t].fixed();
            } else {
                lists.get(terms[t].b()).add(t);
            }
        }
        this.ofSlot = lists.stream()
                .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }

    /** What all ties count softly. */
    long soft() {
        return softTotal;
    }

    /** What all ties are longer than they may be. */
    long over() {
        return overTotal;
    }

    /** What the ties of one slot count softly. */
    long softOf(int slot) {
        long sum = 0;
        for (int t : ofSlot[slot]) {
            sum += soft[t];
        }
        return sum;
    }

    /** What the ties of one slot are longer than they may be. */
    long overOf(int slot) {
        long sum = 0;
        for (int t : ofSlot[slot]) {
            sum += over[t];
        }
        return sum;
    }

    /** Change of the soft amount by what was scored last. */
    long softChange() {
        return softChange;
    }

    /** Change of what ties are too long by what was scored last. */
    long overChange() {
        return overChange;
    }

    /** Scores a slot at a place. */
    void probe(int slot, Option option, int x, int y, int z) {
        probedSlot = slot;
        softChange = 0;
        overChange = 0;
        for (int t : ofSlot[slot]) {
            TieTerm term = terms[t];
            boolean isFirst = term.a() == slot;
            Foot foot = term.foot(isFirst, option.turn(), x, y, z);
            long length = term.length(foot, isFirst ? second[t] : first[t]);
            probedFoot[t] = foot;
            probedSoft[t] = length / SHARE;
            probedOver[t] = Math.max(0, length - term.longest());
            softChange += probedSoft[t] - soft[t];
            overChange += probedOver[t] - over[t];
        }
    }

    void commit() {
        for (int t : ofSlot[probedSlot]) {
            set(t, probedSoft[t], probedOver[t]);
            if (terms[t].a() == probedSlot) {
                first[t] = probedFoot[t];
            } else {
                second[t] = probedFoot[t];
            }
        }
    }

    void remove(int slot) {
        for (int t : ofSlot[slot]) {
            set(t, 0, 0);
            if (terms[t].a() == slot) {
                first[t] = null;
            } else {
                second[t] = null;
            }
        }
    }

    private void set(int t, long softNow, long overNow) {
        softTotal += softNow - soft[t];
        overTotal += overNow - over[t];
        soft[t] = softNow;
        over[t] = overNow;
    }
}
