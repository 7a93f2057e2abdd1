package org.shelterwright.layouts.boltdown;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.cable.RouteShape;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * What is done at a unit with a cable that ends at it.
 *
 * @param wire id of the wire
 * @param earthing whether it earths
 * @param text what to do, in one line
 * @param closed whether both ends are connected after it
 * @param first whether it is done before the unit comes in, which would cover the tray
 */
public record CableTask(String wire, boolean earthing, String text, boolean closed, boolean first) {
    /**
     * The tasks at a unit when those given are in already.
     *
     * @param laid ids of wires that were laid before, since their trays are covered by now
     */
    static List<CableTask> of(Scene scene, PlacedUnit unit, Set<String> in, Set<String> laid) {
        List<CableTask> tasks = new ArrayList<>();
        for (LaidWire one : CableNet.of(scene).wires()) {
            of(scene, unit, in, one, laid.contains(one.wire().id())).ifPresent(tasks::add);
        }
        return tasks;
    }

    /** The task of laying a wire before a unit comes in that would cover its tray. */
    static CableTask layFirst(Scene scene, LaidWire laid) {
        Wire wire = laid.wire();
        return new CableTask(
                wire.id(),
                earthing(laid),
                "Before it comes in: " + wire.id().toUpperCase(Locale.ROOT) + " " + cableName(laid) + by(laid)
                        + ": lay from "
                        + named(scene, wire.from()) + " to " + named(scene, wire.to())
                        + ", both ends open, labels on; the tray is covered afterwards",
                false,
                true);
    }

    private static boolean earthing(LaidWire laid) {
        Cable cable = laid.cable();
        return cable != null && cable.cableClass() == CableClass.EARTH;
    }

    private static Optional<CableTask> of(Scene scene, PlacedUnit unit, Set<String> in, LaidWire laid, boolean before) {
        Wire wire = laid.wire();
        boolean from = owner(wire.from()).equals(unit.id());
        boolean to = owner(wire.to()).equals(unit.id());
        if (!from && !to) {
            return Optional.empty();
        }
        String own = from ? wire.from() : wire.to();
        String other = from ? wire.to() : wire.from();
        String far = owner(other);
        boolean there = far.equals(unit.id()) || far.equals("body") || in.contains(far);
        boolean inside = far.equals("body") || scene.unit(far).isPresent();
        String name = wire.id().toUpperCase(Locale.ROOT) + " " + (before ? "(laid)" : cableName(laid)) + ", "
                + port(own) + (before ? "" : by(laid));
        String text = there
                ? name + " to " + named(scene, other) + ": connect both ends, label on"
                : before
                        ? name + ": connect this end, that for " + named(scene, other) + " stays open"
                        : inside
                                ? name + ": lay, leave the end for " + named(scene, other) + " open, label on"
                                : name + ": lay to the entry panel for " + named(scene, other) + ", label on";
        return Optional.of(new CableTask(wire.id(), earthing(laid), text, there, false));
    }

    /** Its cable and the length to cut, such as "Power cable 3 x 1.5, 7.4 m". */
    private static String cableName(LaidWire laid) {
        Cable cable = laid.cable();
        String name = cable == null ? "cable not chosen" : cable.name();
        return laid.cutLength() < 0
                ? name
                : name + ", " + Amounts.number(Math.ceil(laid.cutLength() / 1e5) / 10, 1) + " m";
    }

    private static String by(LaidWire laid) {
        RouteShape shape = laid.shape();
        List<String> trays = shape == null
                ? List.of()
                : shape.route().runs().stream()
                        .map(run -> run.tray())
                        .filter(Objects::nonNull)
                        .distinct()
                        .toList();
        return trays.isEmpty() ? "" : ", by " + String.join(", ", trays);
    }

    private static String named(Scene scene, String end) {
        String owner = owner(end);
        return scene.unit(owner).map(PlacedUnit::name).orElse(owner) + ", " + port(end);
    }

    static String owner(String end) {
        return end.substring(0, Math.max(0, end.indexOf('/')));
    }

    private static String port(String end) {
        return end.substring(end.indexOf('/') + 1);
    }
}
