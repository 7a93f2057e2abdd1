package org.shelterwright.layouts.boltdown;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.layout.BoltDownOrder;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** The wires that must be laid before one of their units is in, since by then another unit covers one of their trays. */
final class LayFirst {
    private LayFirst() {}

    /** By index of the unit that covers the tray. A wire of which no end is in the order, or that is covered from the start, is left out. */
    static Map<Integer, List<LaidWire>> by(Scene scene, BoltDownOrder order) {
        TrayReach reach = new TrayReach(scene);
        List<PlacedUnit> units =
                order.units().stream().flatMap(id -> scene.unit(id).stream()).toList();
        Map<Integer, List<LaidWire>> first = new HashMap<>();
        for (LaidWire wire : CableNet.of(scene).wires()) {
            PlacedUnit covering = covering(reach, wire, units);
            if (covering != null) {
                first.computeIfAbsent(covering.index(), any -> new ArrayList<>())
                        .add(wire);
            }
        }
        return first;
    }

    /** The unit with which its trays are covered at last, if that is in no later than its first end. */
    private static @Nullable PlacedUnit covering(TrayReach reach, LaidWire wire, List<PlacedUnit> units) {
        BitSet in = new BitSet();
        if (!wire.routed() || !reach.reached(wire, in)) {
            return null;
        }
        for (PlacedUnit unit : units) {
            in.set(unit.index());
            if (!reach.reached(wire, in)) {
                return unit;
            }
            if (wire.units().contains(unit.id())) {
                return null;
            }
        }
        return null;
    }
}
