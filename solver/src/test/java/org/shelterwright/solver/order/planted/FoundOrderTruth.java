package org.shelterwright.solver.order.planted;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.ways.UnitWays;
import org.shelterwright.solver.order.FoundOrder;
import org.shelterwright.solver.order.Stuck;

/** Holds what was found against ways that are asked afresh, one by one, with nothing remembered. */
public final class FoundOrderTruth {
    private final Scene scene;
    private final UnitWays ways;
    private final List<String> faults = new ArrayList<>();

    private FoundOrderTruth(Scene scene) {
        this.scene = scene;
        this.ways = new UnitWays(scene);
    }

    /**
     * Gives what is wrong, one sentence each: a unit of the order that does not come in past those before it; a stuck one that
     * comes out past the others that are stuck (if none does, no order brings them in: what comes out past some comes out past
     * fewer); a set of blockers that does not hold it, or of which one may stay.
     */
    public static List<String> faults(Scene scene, FoundOrder found) {
        FoundOrderTruth truth = new FoundOrderTruth(scene);
        BitSet rest = new BitSet();
        found.stuck().forEach(one -> rest.set(truth.index(one.unit())));
        truth.order(found.order().units(), rest);
        found.stuck().forEach(one -> truth.stuck(one, rest));
        return truth.faults;
    }

    private void order(List<String> order, BitSet rest) {
        BitSet in = (BitSet) rest.clone();
        for (String id : order) {
            if (!free(id, in)) {
                faults.add(id + " does not come in past those before it.");
            }
            in.set(index(id));
        }
        if (in.cardinality() != scene.units().size()) {
            faults.add("Some units are neither in the order nor stuck.");
        }
    }

    private void stuck(Stuck stuck, BitSet rest) {
        BitSet others = (BitSet) rest.clone();
        others.clear(index(stuck.unit()));
        if (free(stuck.unit(), others)) {
            faults.add(stuck.unit() + " comes out past all that are stuck.");
        }
        stuck.blockers().forEach(one -> others.clear(index(one)));
        if (!free(stuck.unit(), others)) {
            faults.add(stuck.unit() + " does not come out with its blockers gone.");
        }
        for (String one : stuck.blockers()) {
            others.set(index(one));
            if (free(stuck.unit(), others)) {
                faults.add(one + " blocks " + stuck.unit() + " needlessly: it may stay.");
            }
            others.clear(index(one));
        }
    }

    private boolean free(String id, BitSet in) {
        PlacedUnit unit = scene.unit(id).orElseThrow();
        BitSet gone = new BitSet();
        gone.set(0, scene.units().size());
        gone.andNot(in);
        return ways.out(unit, gone).free();
    }

    private int index(String id) {
        return scene.unit(id).orElseThrow().index();
    }
}
