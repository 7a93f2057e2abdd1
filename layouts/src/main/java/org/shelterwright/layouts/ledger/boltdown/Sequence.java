package org.shelterwright.layouts.ledger.boltdown;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.shelterwright.layouts.layout.BoltDownOrder;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * The placed units in the order of the layout.
 *
 * @param units those that are in the order, first one first
 * @param leftOut those that are not
 */
record Sequence(BoltDownOrder order, List<PlacedUnit> units, List<PlacedUnit> leftOut) {
    static Optional<Sequence> of(Scene scene) {
        BoltDownOrder order = scene.layout().boltDown();
        if (order == null) {
            return Optional.empty();
        }
        List<PlacedUnit> units = new ArrayList<>();
        BitSet in = new BitSet();
        for (String id : order.units()) {
            scene.unit(id).ifPresent(unit -> {
                units.add(unit);
                in.set(unit.index());
            });
        }
        return Optional.of(new Sequence(
                order,
                units,
                scene.units().stream().filter(unit -> !in.get(unit.index())).toList()));
    }

    /** What is not in yet when a unit of the order is brought in, by index. */
    BitSet goneAt(int step, int count) {
        BitSet gone = new BitSet();
        gone.set(0, count);
        for (int i = 0; i < step; i++) {
            gone.clear(units.get(i).index());
        }
        return gone;
    }
}
