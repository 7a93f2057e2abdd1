package org.shelterwright.layouts.boltdown;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.cable.RouteShape;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * What is done at a unit with a cable that ends at it. An end is connected when its unit is in, but at batteries, which are live, only
 * when the other end is; earth is not live.
 *
 * @param wire id of the wire
 * @param earthing whether it earths
 * @param text what to do, in one line
 * @param closed whether both ends are connected after it
 * @param first whether it is done before the unit comes in, which would cover the tray
 * @param ends how many ends are connected
 * @param laidMetres length that is laid (m); 0 if it was laid before
 */
public record CableTask(
        String wire, boolean earthing, String text, boolean closed, boolean first, int ends, double laidMetres) {
    private static final String BODY = "body";

    /**
     * The tasks at a unit when those given are in already.
     *
     * @param in numbers of the steps of what is in, by unit
     * @param laid ids of wires that were laid before, since their trays are covered by now
     */
    static List<CableTask> of(Scene scene, PlacedUnit unit, Map<String, Integer> in, Set<String> laid) {
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
                "Before it comes in: " + wire.id().toUpperCase(Locale.ROOT) + " " + cableName(laid) + ": lay" + by(laid)
                        + " from " + named(scene, wire.from()) + " to " + named(scene, wire.to())
                        + ", both ends open; the tray is covered afterwards",
                false,
                true,
                0,
                metres(laid));
    }

    private static boolean earthing(LaidWire laid) {
        Cable cable = laid.cable();
        return cable != null && cable.cableClass() == CableClass.EARTH;
    }

    private static Optional<CableTask> of(
            Scene scene, PlacedUnit unit, Map<String, Integer> in, LaidWire laid, boolean before) {
        Wire wire = laid.wire();
        boolean from = owner(wire.from()).equals(unit.id());
        boolean to = owner(wire.to()).equals(unit.id());
        if (!from && !to) {
            return Optional.empty();
        }
        String own = from ? wire.from() : wire.to();
        String other = from ? wire.to() : wire.from();
        String far = owner(other);
        boolean within = far.equals(unit.id());
        boolean liveHere = !within && !earthing(laid) && battery(unit);
        boolean live = liveHere
                || !within
                        && !earthing(laid)
                        && scene.unit(far).filter(CableTask::battery).isPresent();
        Ends ends = new Ends(scene, laid, before, port(own), other, liveHere, live);
        Integer step = in.get(far);
        return Optional.of(within || far.equals(BODY) ? ends.both() : step != null ? ends.second(step) : ends.first());
    }

    /**
     * The ends of a wire as seen from the unit at one of them.
     *
     * @param port name of its port
     * @param other the other end, as the brief writes it
     * @param liveHere whether the unit is a battery that the wire makes live
     * @param live whether the unit or that at the other end is
     */
    private record Ends(
            Scene scene, LaidWire laid, boolean before, String port, String other, boolean liveHere, boolean live) {
        /** The other end is at the body or at the unit itself, and so can be connected now. */
        CableTask both() {
            String there = named(scene, other);
            String text = liveHere
                    ? laying("", ", ") + "connect at " + there + ", then at " + port + ", the battery last"
                    : "connect at " + port + laying(", ", "") + ", connect at " + there;
            return task(cable() + text, true, 2, now());
        }

        /** The unit at the other end is in, and the cable laid. */
        CableTask second(int step) {
            String text = liveHere
                    ? "connect the far end, then at " + port + ", the battery last"
                    : "connect at " + port + (live ? ", then the battery last" : "");
            String name = (before ? "(laid)" : "from step " + step) + " (" + named(scene, other) + "): ";
            return task(name + text, true, live ? 2 : 1, 0);
        }

        /** The unit at the other end comes later, or is elsewhere. */
        CableTask first() {
            String there = named(scene, other);
            if (live) {
                return task(
                        cable() + laying("", "; ") + port + " and the end for " + there + " stay open and covered",
                        false,
                        0,
                        now());
            }
            String rest = scene.unit(owner(other)).isPresent()
                    ? "; the end for " + there + " stays open"
                    : " to the entry panel for " + there;
            return task(cable() + "connect at " + port + laying(", ", "") + rest, false, 1, now());
        }

        /** Metres to lay now. */
        private double now() {
            return before ? 0 : metres(laid);
        }

        private String cable() {
            return (before ? "(laid)" : cableName(laid)) + ": ";
        }

        private String laying(String between, String after) {
            return before ? "" : between + "lay" + by(laid) + after;
        }

        private CableTask task(String text, boolean closed, int ends, double laidMetres) {
            String id = laid.wire().id();
            return new CableTask(
                    id, earthing(laid), id.toUpperCase(Locale.ROOT) + " " + text, closed, false, ends, laidMetres);
        }
    }

    private static boolean battery(PlacedUnit unit) {
        return unit.item().kind() == ItemKind.BATTERY_BOX;
    }

    private static double metres(LaidWire laid) {
        return Math.max(0, laid.cutLength()) * 1e-6;
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
        return trays.isEmpty() ? "" : " by " + String.join(", ", trays);
    }

    /** An end of a wire in words, such as "Power unit, mains out". */
    public static String named(Scene scene, String end) {
        String owner = owner(end);
        if (owner.equals(BODY)) {
            return port(end) + " of the body";
        }
        return scene.unit(owner).map(PlacedUnit::name).orElse(owner) + ", " + port(end);
    }

    static String owner(String end) {
        return end.substring(0, Math.max(0, end.indexOf('/')));
    }

    private static String port(String end) {
        return end.substring(end.indexOf('/') + 1);
    }
}
