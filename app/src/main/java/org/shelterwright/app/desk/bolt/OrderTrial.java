package org.shelterwright.app.desk.bolt;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.layouts.layout.BoltDownOrder;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** Whether an order works: every unit has its way in, what carries it is there, and what must be before is. */
final class OrderTrial {
    private OrderTrial() {}

    /** The first reason why an order does not work, in a sentence; empty if it does. Cost: one way for each unit. */
    static Optional<String> of(Scene scene, BoltDownOrder order) {
        Set<String> in = new HashSet<>();
        for (BoltDownStep step : BoltDownPlan.of(scene).orElseThrow().steps()) {
            Optional<String> reason = reason(scene, order, step, in);
            if (reason.isPresent()) {
                return reason;
            }
            in.add(step.unit().id());
        }
        return Optional.empty();
    }

    private static Optional<String> reason(Scene scene, BoltDownOrder order, BoltDownStep step, Set<String> in) {
        PlacedUnit unit = step.unit();
        String host = unit.placement().station().host();
        if (host != null && !in.contains(host)) {
            return Optional.of(unit.name() + " is mounted on or under " + name(scene, host) + ", which is not in yet.");
        }
        List<String> missing = new ArrayList<>();
        order.before().stream()
                .filter(one -> one.then().equals(unit.id()) && !in.contains(one.first()))
                .forEach(one -> missing.add(name(scene, one.first())));
        if (!missing.isEmpty()) {
            return Optional.of(Wording.list(missing) + (missing.size() == 1 ? " was" : " were")
                    + " asked to be in before " + unit.name() + ".");
        }
        return switch (step.passage().answer()) {
            case FREE -> Optional.empty();
            case BLOCKED ->
                Optional.of(unit.name() + " has no way in past " + Wording.list(blockers(scene, step, in)) + ".");
            case TOO_LARGE -> Optional.of(unit.name() + " comes through no opening of the body.");
            case OVERLAPS ->
                Optional.of(unit.name() + " overlaps others where it stands. Move it on the Fit-out page first.");
        };
    }

    private static List<String> blockers(Scene scene, BoltDownStep step, Set<String> in) {
        return scene.units().stream()
                .filter(other -> step.passage().frontier().get(other.index()) && in.contains(other.id()))
                .map(PlacedUnit::name)
                .toList();
    }

    private static String name(Scene scene, String id) {
        return scene.unit(id).map(PlacedUnit::name).orElse(id);
    }
}
