package org.shelterwright.layouts.boltdown;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * What is done at a unit with a cable that ends at it.
 *
 * @param wire id of the cable
 * @param text what to do, in one line
 * @param closed whether both ends are connected after it
 */
public record CableTask(String wire, String type, String text, boolean closed) {
    /** The tasks at a unit when those given are in already. */
    static List<CableTask> of(Scene scene, PlacedUnit unit, Set<String> in) {
        List<CableTask> tasks = new ArrayList<>();
        for (Wire wire : scene.brief().wires()) {
            boolean from = owner(wire.from()).equals(unit.id());
            boolean to = owner(wire.to()).equals(unit.id());
            if (!from && !to) {
                continue;
            }
            String own = from ? wire.from() : wire.to();
            String other = from ? wire.to() : wire.from();
            String far = owner(other);
            boolean there = far.equals(unit.id()) || far.equals("body") || in.contains(far);
            String name = wire.id().toUpperCase(java.util.Locale.ROOT) + " " + wire.type() + ", " + port(own);
            boolean inside = far.equals("body") || scene.unit(far).isPresent();
            tasks.add(new CableTask(
                    wire.id(),
                    wire.type(),
                    there
                            ? name + " to " + named(scene, other) + ": connect both ends, label on"
                            : inside
                                    ? name + ": lay, leave the end for " + named(scene, other) + " open, label on"
                                    : name + ": lay to the entry panel for " + named(scene, other) + ", label on",
                    there));
        }
        return tasks;
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
