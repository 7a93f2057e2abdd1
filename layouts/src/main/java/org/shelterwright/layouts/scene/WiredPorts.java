package org.shelterwright.layouts.scene;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shelterwright.catalog.item.Port;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rules;

/**
 * The ports of each unit that wires of the brief end at, wherever the units stand, with the room of their plugs. There are none where no
 * rule set says how much room a plug takes.
 */
record WiredPorts(Map<String, List<Wired>> byUnit) {
    /**
     * A port with a wire.
     *
     * @param plugRoom in the frame of the item
     */
    record Wired(Port port, Box plugRoom) {}

    static WiredPorts of(Layout layout, Rules rules) {
        Brief brief = layout.brief();
        int depth = micrometres(rules, Figure.PLUG_DEPTH);
        int width = micrometres(rules, Figure.PLUG_WIDTH);
        if (depth == 0 || width == 0) {
            return new WiredPorts(Map.of());
        }
        Set<String> ends = new HashSet<>();
        for (Wire wire : brief.wires()) {
            ends.add(wire.from());
            ends.add(wire.to());
        }
        Map<String, List<Wired>> found = new HashMap<>();
        for (UnitSpec unit : brief.units()) {
            List<Wired> wired = layout.item(unit).ports().stream()
                    .filter(port -> ends.contains(unit.id() + "/" + port.name()))
                    .map(port -> new Wired(port, port.plugRoom(depth, width)))
                    .toList();
            if (!wired.isEmpty()) {
                found.put(unit.id(), wired);
            }
        }
        return new WiredPorts(found);
    }

    List<Wired> of(UnitSpec unit) {
        return byUnit.getOrDefault(unit.id(), List.of());
    }

    private static int micrometres(Rules rules, Figure figure) {
        return (int) Math.round(1000 * Math.max(0, Math.min(10_000, rules.valueOr(figure, 0))));
    }
}
