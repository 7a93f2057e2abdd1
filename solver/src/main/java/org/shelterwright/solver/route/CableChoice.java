package org.shelterwright.solver.route;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.item.Port;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.cable.Sizing;
import org.shelterwright.layouts.scene.Scene;

/** The cable of a wire: that of its type, or the smallest of its family that fits its ports and serves its length. */
final class CableChoice {
    private final Scene scene;
    private final CableNet net;

    CableChoice(Scene scene) {
        this.scene = scene;
        this.net = CableNet.of(scene);
    }

    /**
     * Chooses.
     *
     * @param lengthM length of the cable (m)
     * @return empty if the layout holds no cable of that type or family
     */
    Optional<Cable> of(LaidWire laid, double lengthM) {
        Wire wire = laid.wire();
        String type = wire.type();
        if (type != null) {
            return Optional.ofNullable(scene.layout().parts().cables().get(type));
        }
        List<Cable> family = scene.layout().parts().cables().values().stream()
                .filter(cable -> cable.family().equals(wire.family()))
                .sorted(Comparator.comparingDouble(Cable::areaMm2).thenComparing(Cable::id))
                .toList();
        List<Cable> fitting = family.stream().filter(cable -> fits(laid, cable)).toList();
        List<Cable> known = fitting.isEmpty() ? family : fitting;
        return known.stream()
                .filter(cable -> Sizing.serves(scene, wire, net.duty(laid), cable, lengthM))
                .findFirst()
                .or(() -> known.stream().reduce((a, b) -> b));
    }

    private static boolean fits(LaidWire wire, Cable cable) {
        return Stream.of(wire.from(), wire.to())
                .flatMap(end -> end == null ? Stream.<Port>empty() : Stream.ofNullable(end.port()))
                .allMatch(port -> port.cableClass() == cable.cableClass()
                        && cable.connectors().contains(port.connector()));
    }
}
