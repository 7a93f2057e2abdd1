package org.shelterwright.layouts.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Port;
import org.shelterwright.catalog.json.NearestName;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.Trailer;
import org.shelterwright.layouts.brief.TrailerLoad;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.Placement;

/** The units of a layout, found and replaced. */
final class Units {
    private Units() {}

    static UnitSpec require(Layout layout, String unit) {
        List<UnitSpec> units = layout.brief().units();
        return units.stream()
                .filter(one -> one.id().equals(unit))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The brief has no unit \"" + unit + "\"."
                        + NearestName.hint(
                                unit, units.stream().map(UnitSpec::id).toList())));
    }

    static Placement placed(Layout layout, String unit) {
        require(layout, unit);
        Placement placement = layout.placements().get(unit);
        if (placement == null) {
            throw new IllegalArgumentException("The unit \"" + unit + "\" is not placed yet. Put it at a place first.");
        }
        return placement;
    }

    /** The units of the body, then those that ride on the trailer. */
    static List<UnitSpec> ofAll(Brief brief) {
        Trailer trailer = brief.trailer();
        Stream<UnitSpec> loads =
                trailer == null ? Stream.empty() : trailer.loads().stream().map(TrailerLoad::unit);
        return Stream.concat(brief.units().stream(), loads).toList();
    }

    static Layout with(Layout old, Brief brief, Map<String, Item> items) {
        return old.withAsked(
                brief,
                new Parts(
                        old.parts().body(),
                        old.parts().carrier(),
                        old.parts().trailer(),
                        new LinkedHashMap<>(items),
                        old.parts().cables()));
    }

    /**
     * Adds an item to those that a layout holds.
     *
     * @throws IllegalArgumentException if it holds another version of it
     */
    static void hold(Map<String, Item> held, Item item) {
        Item before = held.putIfAbsent(item.id(), item);
        if (before != null && !before.equals(item)) {
            throw new IllegalArgumentException("The layout holds another version of item \"" + item.id()
                    + "\". Take over the catalog's version first, or use the version that it holds.");
        }
    }

    /** The items that a brief uses. */
    static Map<String, Item> used(Brief brief, Map<String, Item> held) {
        Map<String, Item> items = new LinkedHashMap<>(held);
        items.keySet().retainAll(ofAll(brief).stream().map(UnitSpec::item).toList());
        return items;
    }

    /** The brief without those wires of some units that end at a port that their item lacks. */
    static Brief withoutLooseWires(Brief brief, Set<String> units, Item item) {
        Set<String> ports = item.ports().stream().map(Port::name).collect(Collectors.toSet());
        return brief.withWires(brief.wires().stream()
                .filter(wire -> Stream.of(wire.from(), wire.to())
                        .allMatch(end -> !units.contains(owner(end)) || ports.contains(port(end))))
                .toList());
    }

    private static String port(String end) {
        return end.substring(end.indexOf('/') + 1);
    }

    /** The unit, or "body", at which the end of a wire lies. */
    static String owner(String end) {
        return end.substring(0, Math.max(0, end.indexOf('/')));
    }

    /** The outline of a placed unit on station. */
    static Box outline(Layout layout, String unit) {
        return placed(layout, unit)
                .station()
                .pose()
                .outline(layout.item(require(layout, unit)).size());
    }

    /** The placement of a unit moved along an axis on station. */
    static Placement shifted(Layout layout, String unit, Axis axis, int by) {
        Placement old = placed(layout, unit);
        Pose pose = old.station().pose().moved(Point.ORIGIN.with(axis, by));
        return old.withStation(old.station().with(pose));
    }
}
