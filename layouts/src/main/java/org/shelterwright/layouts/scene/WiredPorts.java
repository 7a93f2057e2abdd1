package org.shelterwright.layouts.scene;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shelterwright.catalog.item.Port;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.layout.Layout;

/** The ports of each unit that wires of the brief end at, wherever the units stand. */
record WiredPorts(Map<String, List<Port>> byUnit) {
    static WiredPorts of(Layout layout) {
        Brief brief = layout.brief();
        Set<String> ends = new HashSet<>();
        for (Wire wire : brief.wires()) {
            ends.add(wire.from());
            ends.add(wire.to());
        }
        Map<String, List<Port>> found = new HashMap<>();
        for (UnitSpec unit : brief.units()) {
            List<Port> wired = layout.item(unit).ports().stream()
                    .filter(port -> ends.contains(unit.id() + "/" + port.name()))
                    .toList();
            if (!wired.isEmpty()) {
                found.put(unit.id(), wired);
            }
        }
        return new WiredPorts(found);
    }

    List<Port> of(UnitSpec unit) {
        return byUnit.getOrDefault(unit.id(), List.of());
    }
}
