package org.shelterwright.solver.order;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Chooses among orders by keeping, after each unit taken out, the few cheapest sets of what is left. */
final class Beam {
    /** Once so many ways a unit were looked for, only the cheapest set is followed. */
    private static final long ASKED_A_UNIT = 12;

    private final Removability removability;
    private final Preference preference;
    private final int width;

    /** Compared by identity. */
    private static final class State {
        private final BitSet in;
        private final int last;
        private final double price;
        private final @Nullable State before;

        State(BitSet in, int last, double price, @Nullable State before) {
            this.in = in;
            this.last = last;
            this.price = price;
            this.before = before;
        }
    }

    Beam(Removability removability, Preference preference, int width) {
        this.removability = removability;
        this.preference = preference;
        this.width = width;
    }

    /**
     * The cheapest order that it comes upon of bringing in.
     *
     * @param rest units that cannot be taken out, and stay in first
     * @return the others, first one first
     */
    List<Integer> order(int count, BitSet rest) {
        BitSet all = new BitSet();
        all.set(0, count);
        List<State> states = List.of(new State(all, -1, 0, null));
        for (int place = count; place > rest.cardinality(); place--) {
            states = next(states, place, rest);
        }
        List<Integer> order = new ArrayList<>();
        for (State at = states.get(0); at != null && at.last >= 0; at = at.before) {
            order.add(at.last);
        }
        return order;
    }

    private List<State> next(List<State> states, int place, BitSet rest) {
        Map<BitSet, State> found = new HashMap<>();
        List<State> list = new ArrayList<>();
        for (State state : states) {
            for (int unit = state.in.nextSetBit(0); unit >= 0; unit = state.in.nextSetBit(unit + 1)) {
                if (rest.get(unit) || !removability.removable(unit, state.in)) {
                    continue;
                }
                BitSet in = (BitSet) state.in.clone();
                in.clear(unit);
                State next = new State(in, unit, state.price + preference.price(unit, place, state.last), state);
                State twin = found.get(in);
                if (twin == null || next.price < twin.price) {
                    found.put(in, next);
                    list.remove(twin);
                    list.add(next);
                }
            }
        }
        list.sort(Comparator.comparingDouble((State one) -> one.price).thenComparingInt(one -> one.last));
        if (list.isEmpty()) {
            throw new IllegalStateException("What greedy taking out could take out can always be taken out.");
        }
        int kept = removability.asked()
                        > ASKED_A_UNIT * removability.scene().units().size()
                ? 1
                : width;
        return Collections.unmodifiableList(list.subList(0, Math.min(kept, list.size())));
    }
}
