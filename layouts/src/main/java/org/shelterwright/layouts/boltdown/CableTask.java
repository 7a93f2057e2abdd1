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
        Integer step = far.equals(unit.id()) ? null : in.get(far);
        boolean alone = far.equals(unit.id()) || far.equals(BODY);
        boolean battery = !earthing(laid)
                && (battery(unit) || scene.unit(far).filter(CableTask::battery).isPresent());
        String name = wire.id().toUpperCase(Locale.ROOT) + " ";
        String laying = before ? ", lay" : ", lay" + by(laid);
        String cable = (before ? "(laid)" : cableName(laid)) + ": ";
        String here = "connect at " + port(own);
        String text;
        int ends;
        if (step != null) {
            text = name + (before ? "(laid)" : "from step " + step) + " (" + named(scene, other) + "): "
                    + (!battery
                            ? here
                            : battery(unit)
                                    ? "connect the far end, then at " + port(own) + ", the battery last"
                                    : here + ", then the battery last");
            ends = battery ? 2 : 1;
        } else if (alone) {
            text = name + cable + here + (before ? "" : laying) + ", connect at " + named(scene, other);
            ends = 2;
        } else {
            String end = named(scene, other);
            String open = scene.unit(far).isPresent()
                    ? "; the end for " + end + " stays open"
                    : " to the entry panel for " + end;
            text = battery
                    ? name + cable + (before ? "" : laying.substring(2) + "; ") + port(own) + " and the end for " + end
                            + " stay open and covered"
                    : name + cable + here + (before ? "" : laying) + open;
            ends = battery ? 0 : 1;
        }
        return Optional.of(new CableTask(
                wire.id(),
                earthing(laid),
                text,
                step != null || alone,
                false,
                ends,
                before || step != null ? 0 : metres(laid)));
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
