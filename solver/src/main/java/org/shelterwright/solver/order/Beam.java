package org.shelterwright.solver.order;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Chooses among orders by keeping, after each unit taken out, the few cheapest sets of what is left. */
final class Beam {
    /** Ways looked for in vain, a unit, after which nothing more is asked. These are the dear ones. */
    private static final double REFUSED_A_UNIT = 0.25;

    private final Removability removability;
    private final Preference preference;
    private final int width;
    private final long mostRefused;

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
        this.mostRefused = removability.refused()
                + Math.round(REFUSED_A_UNIT * removability.scene().units().size());
    }

    /**
     * The cheapest order that it comes upon of bringing in. Once too many ways were looked for in vain, the rest follows the
     * units as they were taken out: what came out past some comes out past fewer.
     *
     * @return first one first; without those that stay stuck
     */
    List<Integer> order(TakeOut taken) {
        BitSet all = (BitSet) taken.rest().clone();
        taken.out().forEach(all::set);
        List<State> states = List.of(new State(all, -1, 0, null));
        for (int place = all.cardinality(); place > taken.rest().cardinality(); place--) {
            List<State> next = next(states, place, taken.rest());
            if (next.isEmpty()) {
                break;
            }
            states = next;
        }
        List<Integer> order = new ArrayList<>();
        for (State at = states.get(0); at != null && at.last >= 0; at = at.before) {
            order.add(at.last);
        }
        List<Integer> others = new ArrayList<>(taken.out());
        others.removeAll(order);
        Collections.reverse(others);
        others.addAll(order);
        return others;
    }

    /**
     * The cheapest sets after one more unit is out; none if too many ways were looked for in vain. Ways are asked for from the
     * cheapest on, and no further than is kept.
     */
    private List<State> next(List<State> states, int place, BitSet rest) {
        Set<BitSet> found = new HashSet<>();
        List<State> list = new ArrayList<>();
        for (Step step : steps(states, place, rest)) {
            if (list.size() == width || removability.refused() > mostRefused) {
                break;
            }
            BitSet in = (BitSet) step.from().in.clone();
            in.clear(step.unit());
            if (!found.contains(in) && removability.removable(step.unit(), step.from().in)) {
                found.add(in);
                list.add(new State(in, step.unit(), step.price(), step.from()));
            }
        }
        return list;
    }

    private List<Step> steps(List<State> states, int place, BitSet rest) {
        List<Step> steps = new ArrayList<>();
        for (State state : states) {
            for (int unit = state.in.nextSetBit(0); unit >= 0; unit = state.in.nextSetBit(unit + 1)) {
                if (!rest.get(unit)) {
                    steps.add(new Step(state, unit, state.price + preference.price(unit, place, state.last)));
                }
            }
        }
        steps.sort(Comparator.comparingDouble(Step::price).thenComparingInt(Step::unit));
        return steps;
    }

    /** A unit that may be next to be taken out. */
    private record Step(State from, int unit, double price) {}
}
