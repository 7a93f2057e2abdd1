package org.shelterwright.solver.order;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Takes units out one by one, whatever can come out, until none can.
 *
 * <p>Why this finds an order whenever there is one: let u₁ ... uₙ be an order of taking out all, and let the taking out stop with
 * the rest R not empty. Take the first uᵢ of the order in R. All before it are gone, so R without uᵢ is part of {uᵢ₊₁ ... uₙ},
 * past which uᵢ came out; and what comes out past some comes out past fewer. So uᵢ can come out: a contradiction. The same
 * argument shows that the rest is the same whatever is chosen first.
 *
 * @param out in the order of taking out
 * @param rest what stays in
 */
record TakeOut(List<Integer> out, BitSet rest) {
    /**
     * Takes out, over and over, from the one with the shortest way in the empty body on: those nearest to an opening are the
     * least likely to be asked for in vain. Cost: at most n² / 2 questions; see {@link Removability} for what is saved.
     */
    static TakeOut greedily(Removability removability, int count) {
        BitSet in = new BitSet();
        in.set(0, count);
        List<Integer> nearFirst = removability.nearFirst();
        List<Integer> out = new ArrayList<>();
        boolean more = true;
        while (more) {
            more = false;
            for (int unit : nearFirst) {
                if (in.get(unit) && removability.removable(unit, in)) {
                    in.clear(unit);
                    out.add(unit);
                    more = true;
                }
            }
            // What only hidden fixings keep in comes out all the same, and is told.
            more |= removability.exemptOne(in);
        }
        return new TakeOut(out, in);
    }
}
