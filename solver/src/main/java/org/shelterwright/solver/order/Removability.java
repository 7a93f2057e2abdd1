package org.shelterwright.solver.order;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.layout.BoltDownOrder.Before;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.ways.Passage;
import org.shelterwright.layouts.ways.ToolReach;
import org.shelterwright.layouts.ways.UnitWays;

/**
 * Whether a unit can be taken out while others are still in. All that is asked here is monotone: what can be taken out past
 * some units can be taken out past any fewer. So a way that was found serves again wherever none of the units that it meets is
 * in, and a refusal wherever all of its frontier is.
 *
 * <p>Not for several threads.
 */
final class Removability {
    private final Scene scene;
    private final List<PlacedUnit> units;
    private final UnitWays ways;
    private final Optional<ToolReach> reach;
    private final List<BitSet> guests = new ArrayList<>();
    private final List<BitSet> later = new ArrayList<>();
    private final List<List<BitSet>> met = new ArrayList<>();
    private final List<List<BitSet>> frontiers = new ArrayList<>();
    private final List<List<BitSet>> hiding = new ArrayList<>();
    private final BitSet reachable = new BitSet();
    private final BitSet exempt = new BitSet();
    private long asked;
    private long refused;

    Removability(Scene scene, List<Before> before) {
        this.scene = scene;
        this.units = scene.units();
        this.ways = new UnitWays(scene);
        this.reach = ToolReach.of(scene);
        BitSet none = new BitSet();
        none.set(0, units.size());
        for (PlacedUnit unit : units) {
            guests.add(new BitSet());
            later.add(new BitSet());
            met.add(new ArrayList<>());
            frontiers.add(new ArrayList<>());
            hiding.add(new ArrayList<>());
            if (reach.isPresent() && reach.get().hidden(unit, none).isEmpty()) {
                reachable.set(unit.index());
            }
        }
        for (PlacedUnit unit : units) {
            String host = unit.place(Situation.ON_STATION).host();
            if (host != null) {
                scene.unit(host).ifPresent(one -> guests.get(one.index()).set(unit.index()));
            }
        }
        for (Before one : before) {
            Optional<PlacedUnit> first = scene.unit(one.first());
            Optional<PlacedUnit> then = scene.unit(one.then());
            if (first.isPresent() && then.isPresent()) {
                later.get(first.get().index()).set(then.get().index());
            }
        }
    }

    UnitWays ways() {
        return ways;
    }

    /** All units, those with the shortest way in the empty body first. */
    List<Integer> nearFirst() {
        return units.stream()
                .sorted(Comparator.comparingLong(unit -> ways.alone(unit).length()))
                .map(PlacedUnit::index)
                .toList();
    }

    /** How many ways were looked for. */
    long asked() {
        return asked;
    }

    /** How many of them were looked for in vain. */
    long refused() {
        return refused;
    }

    /** Units that must be in only after this one: those on it, and those that a person set so. */
    BitSet after(int unit) {
        BitSet after = (BitSet) guests.get(unit).clone();
        after.or(later.get(unit));
        return after;
    }

    boolean guest(int host, int unit) {
        return guests.get(host).get(unit);
    }

    /** Whether a unit can be taken out past the others that are in, its fixings within reach of tools. */
    boolean removable(int unit, BitSet in) {
        return comesOut(unit, in) && undone(unit, in) && free(unit, in);
    }

    private boolean comesOut(int unit, BitSet in) {
        return !in.intersects(guests.get(unit)) && !in.intersects(later.get(unit));
    }

    /** Looks no more at the fixings of one unit that only they keep in; gives whether there was one. */
    boolean exemptOne(BitSet in) {
        for (int unit = in.length() - 1; unit >= 0; unit = in.previousSetBit(unit - 1)) {
            if (!exempt.get(unit) && comesOut(unit, in) && !undone(unit, in) && free(unit, in)) {
                exempt.set(unit);
                return true;
            }
        }
        return false;
    }

    /** Units whose fixings stay hidden in every order that brings all in. */
    BitSet exempt() {
        return (BitSet) exempt.clone();
    }

    /** Whether hand and tool get to its fixings; true of those that they never get to, which is another finding. */
    boolean undone(int unit, BitSet in) {
        if (reach.isEmpty() || !reachable.get(unit) || exempt.get(unit)) {
            return true;
        }
        for (BitSet known : hiding.get(unit)) {
            if (within(known, in)) {
                return false;
            }
        }
        BitSet found = reach.get().hiding(units.get(unit), gone(in));
        if (found.isEmpty()) {
            return true;
        }
        hiding.get(unit).add(found);
        return false;
    }

    /** Whether there is a way out past the others that are in. */
    boolean free(int unit, BitSet in) {
        BitSet others = (BitSet) in.clone();
        others.clear(unit);
        for (BitSet known : met.get(unit)) {
            if (!known.intersects(others)) {
                return true;
            }
        }
        for (BitSet known : frontiers.get(unit)) {
            if (within(known, others)) {
                return false;
            }
        }
        asked++;
        Passage passage = ways.out(units.get(unit), gone(in));
        if (passage.free()) {
            BitSet meets = new BitSet();
            for (PlacedUnit other : units) {
                if (other.index() != unit && !others.get(other.index()) && passage.meets(other)) {
                    meets.set(other.index());
                }
            }
            met.get(unit).add(meets);
            return true;
        }
        refused++;
        frontiers.get(unit).add(passage.frontier());
        return false;
    }

    private BitSet gone(BitSet in) {
        BitSet gone = new BitSet();
        gone.set(0, units.size());
        gone.andNot(in);
        return gone;
    }

    private static boolean within(BitSet small, BitSet large) {
        BitSet rest = (BitSet) small.clone();
        rest.andNot(large);
        return rest.isEmpty();
    }

    Scene scene() {
        return scene;
    }
}
