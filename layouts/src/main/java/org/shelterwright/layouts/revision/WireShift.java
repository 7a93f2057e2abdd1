package org.shelterwright.layouts.revision;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.layout.Route;
import org.shelterwright.layouts.scene.Scene;

/**
 * How a wire differs between two revisions.
 *
 * @param wire id of the wire
 * @param first length of its cable in the first (µm); {@code null} if it is not there or not routed
 * @param second the same in the other
 */
public record WireShift(
        String wire, @Nullable Long first, @Nullable Long second) {
    /** The wires that differ, in the order of the first brief, then those that only the other has. */
    public static List<WireShift> between(Scene before, Scene after) {
        Set<String> ids = new LinkedHashSet<>();
        CableNet.of(before).wires().forEach(wire -> ids.add(wire.wire().id()));
        CableNet.of(after).wires().forEach(wire -> ids.add(wire.wire().id()));
        List<WireShift> shifts = new ArrayList<>();
        for (String id : ids) {
            LaidWire a = CableNet.of(before).wire(id).orElse(null);
            LaidWire b = CableNet.of(after).wire(id).orElse(null);
            if (a == null || b == null || !same(a, b)) {
                shifts.add(new WireShift(id, cut(a), cut(b)));
            }
        }
        return shifts;
    }

    /** Whether a wire lies in both exactly alike. */
    static boolean same(LaidWire a, LaidWire b) {
        return a.cutLength() == b.cutLength() && Objects.equals(a.cable(), b.cable()) && path(a).equals(path(b));
    }

    private static List<?> path(LaidWire wire) {
        Route route = wire.shape() == null ? null : wire.shape().route();
        return route == null ? List.of() : route.path();
    }

    private static @Nullable Long cut(@Nullable LaidWire wire) {
        return wire == null || wire.cutLength() < 0 ? null : Long.valueOf(wire.cutLength());
    }
}
