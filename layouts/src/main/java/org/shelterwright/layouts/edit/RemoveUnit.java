package org.shelterwright.layouts.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.brief.Wish;
import org.shelterwright.layouts.layout.Layout;

/**
 * Removes a unit from the brief, with its place, its wires, its people, and the wishes that make no sense without it. What is mounted
 * on or under it comes out.
 *
 * @param unit id of the unit
 */
public record RemoveUnit(String unit) implements Edit {
    @Override
    public String name() {
        return "Remove " + unit;
    }

    @Override
    public Layout apply(Layout layout) {
        Units.require(layout, unit);
        Layout cleared = Carried.takeOut(layout, unit);
        Brief old = layout.brief();
        Brief brief = old.withUnits(old.units().stream()
                        .filter(one -> !one.id().equals(unit))
                        .toList())
                .withOccupants(old.occupants().stream()
                        .filter(one -> !one.unit().equals(unit))
                        .toList())
                .withWishes(old.wishes().stream()
                        .map(this::without)
                        .filter(RemoveUnit::sensible)
                        .toList())
                .withWires(old.wires().stream()
                        .filter(wire -> !ends(wire.from()) && !ends(wire.to()))
                        .toList());
        Set<String> used = Units.ofAll(brief).stream().map(UnitSpec::item).collect(Collectors.toSet());
        Map<String, Item> items = new LinkedHashMap<>(layout.parts().items());
        items.keySet().retainAll(used);
        Layout removed = Units.with(cleared, brief, items);
        return Units.with(
                removed,
                removed.acceptances().stream()
                        .filter(one -> !one.units().contains(unit))
                        .toList());
    }

    private boolean ends(String end) {
        return end.startsWith(unit + "/");
    }

    private Wish without(Wish wish) {
        if (!wish.units().contains(unit)) {
            return wish;
        }
        List<String> left =
                wish.units().stream().filter(one -> !one.equals(unit)).toList();
        return new Wish(wish.kind(), left, wish.distance(), wish.face());
    }

    private static boolean sensible(Wish wish) {
        return wish.units().size() >= wish.kind().leastUnits();
    }
}
