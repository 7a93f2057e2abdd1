package org.shelterwright.layouts.boltdown;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.handling.Carried;
import org.shelterwright.layouts.handling.Handling;
import org.shelterwright.layouts.handling.Handlings;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.scene.PlacedUnit;

/** What is to be at hand for a step. */
final class StepTools {
    private StepTools() {}

    static List<String> of(PlacedUnit unit, List<Bolting> boltings, List<CableTask> cables, Carried carried) {
        Set<String> tools = new LinkedHashSet<>();
        for (Bolting one : boltings) {
            Integer socket = one.socketMm();
            tools.add(socket == null ? "socket for " + one.thread() : "socket " + socket);
        }
        if (!boltings.isEmpty()) {
            double most = boltings.stream()
                    .map(Bolting::finalNm)
                    .mapToDouble(torque -> torque == null ? 0 : torque)
                    .max()
                    .orElse(0);
            tools.add("ratchet");
            tools.add(
                    most > 0
                            ? "torque wrench to " + Amounts.number(Math.ceil(most / 10) * 10, 1) + " N·m"
                            : "torque wrench");
            tools.add("paint marker");
        }
        for (Bolting one : boltings) {
            if (one.places().stream().anyMatch(place -> place.where().startsWith("drill at"))) {
                tools.add("drill with stop for " + one.thread());
            }
        }
        tools.add("tape measure");
        if (!carried.filled().isEmpty() || !carried.later().isEmpty()) {
            tools.add("driver for rack screws");
        }
        cables(tools, cables);
        lifting(tools, unit, carried.handling());
        return List.copyOf(tools);
    }

    private static void cables(Set<String> tools, List<CableTask> cables) {
        if (!cables.isEmpty()) {
            tools.add("cable labels");
        }
        if (cables.stream().anyMatch(one -> one.ends() > 0)) {
            tools.add("cutting and crimping tools");
        }
        if (cables.stream().anyMatch(one -> one.closed() && !one.earthing())) {
            tools.add("continuity tester");
        }
        if (cables.stream().anyMatch(one -> one.closed() && one.earthing())) {
            tools.add("low-ohm meter");
        }
    }

    private static void lifting(Set<String> tools, PlacedUnit unit, @Nullable Handling handling) {
        if (handling != null && handling.means() != Handling.Means.BY_HAND) {
            tools.add(handling.means() == Handling.Means.TROLLEY ? "floor trolley" : "hoist or lifting table");
        }
        if (Handlings.fromPlatform(unit)) {
            tools.add("step platform");
        }
    }
}
