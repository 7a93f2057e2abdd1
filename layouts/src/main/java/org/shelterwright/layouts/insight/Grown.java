package org.shelterwright.layouts.insight;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.edit.TakeOutUnit;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.PiecePlace;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;

/**
 * Layouts in which units are of another size and stay where they are held: what stands on the floor or hangs on a wall keeps its
 * rear right lower corner, what hangs from the roof or under a unit its rear right upper one. What rides on a unit that comes taller rises
 * with its top.
 */
public final class Grown {
    private Grown() {}

    /**
     * The layout with other versions of some items, for all units of them.
     *
     * @param items by id
     */
    public static Layout items(Layout layout, Map<String, Item> items) {
        Map<String, Item> all = new LinkedHashMap<>(layout.parts().items());
        all.putAll(items);
        Layout changed = layout.withAsked(layout.brief(), parts(layout, all));
        return held(layout, changed, unit -> items.containsKey(unit.item()));
    }

    /**
     * The layout for another list: units that it still asks for stay where they are, others go with what is mounted on them, and new ones
     * have no place.
     *
     * @param asked brief, catalog entries and pieces of the other list
     */
    public static Layout onto(Layout before, Layout asked) {
        Set<String> units = asked.brief().units().stream().map(UnitSpec::id).collect(Collectors.toSet());
        Layout left = before;
        for (UnitSpec unit : before.brief().units()) {
            if (!units.contains(unit.id()) && left.placements().containsKey(unit.id())) {
                left = new TakeOutUnit(unit.id()).apply(left);
            }
        }
        Layout kept = left.withAsked(asked.brief(), asked.parts());
        Map<String, PiecePlace> places = new LinkedHashMap<>(kept.contents().places());
        Layout changed = kept.withContents(asked.contents().withPlaces(places));
        Set<String> known = before.brief().units().stream().map(UnitSpec::id).collect(Collectors.toSet());
        return held(before, changed, unit -> known.contains(unit.id()));
    }

    /** The layout with another item for one unit alone; the item must have an id of its own. */
    static Layout unit(Layout layout, String unit, Item item) {
        List<UnitSpec> units = layout.brief().units().stream()
                .map(one -> one.id().equals(unit) ? new UnitSpec(one.id(), one.name(), item.id(), one.group()) : one)
                .toList();
        Map<String, Item> all = new LinkedHashMap<>(layout.parts().items());
        all.put(item.id(), item);
        Brief brief = layout.brief().withUnits(units);
        Layout changed = layout.withAsked(brief, parts(layout, all));
        return held(layout, changed, one -> one.id().equals(unit));
    }

    private static Parts parts(Layout layout, Map<String, Item> items) {
        Parts old = layout.parts();
        return new Parts(old.body(), old.carrier(), old.trailer(), items, old.cables());
    }

    private static Layout held(Layout before, Layout after, Predicate<UnitSpec> changed) {
        Layout held = after;
        for (UnitSpec unit : after.brief().units()) {
            Placement placement = held.placements().get(unit.id());
            if (placement != null && changed.test(unit)) {
                Size from = sizeOf(before, unit.id());
                Size to = after.item(unit).size();
                if (!from.equals(to)) {
                    held = held.with(new Placement(
                            placement.unit(),
                            kept(placement.station(), from, to),
                            keptOrNull(placement.road(), from, to),
                            placement.pin()));
                    held = risen(held, unit.id(), to.z() - from.z());
                }
            }
        }
        return held;
    }

    private static Size sizeOf(Layout layout, String unit) {
        return layout.brief().units().stream()
                .filter(one -> one.id().equals(unit))
                .findFirst()
                .map(one -> layout.item(one).size())
                .orElseThrow();
    }

    private static @Nullable Place keptOrNull(@Nullable Place place, Size from, Size to) {
        return place == null ? null : kept(place, from, to);
    }

    private static Place kept(Place place, Size from, Size to) {
        boolean hangs = place.surface() == Surface.ROOF || place.surface() == Surface.UNDER_UNIT;
        Point held = place.pose().apply(new Point(0, 0, hangs ? from.z() : 0), from);
        Point would = place.pose().apply(new Point(0, 0, hangs ? to.z() : 0), to);
        Pose pose = place.pose().moved(held.minus(would));
        return place.with(pose);
    }

    private static Layout risen(Layout layout, String host, int by) {
        Layout risen = layout;
        for (Placement rider : layout.placements().values()) {
            Place station = raised(rider.station(), host, by);
            Place road = rider.road() == null ? null : raised(rider.road(), host, by);
            if (by != 0 && !(station.equals(rider.station()) && Objects.equals(road, rider.road()))) {
                risen = risen.with(new Placement(rider.unit(), station, road, rider.pin()));
                risen = risen(risen, rider.unit(), by);
            }
        }
        return risen;
    }

    private static Place raised(Place place, String host, int by) {
        return place.surface() == Surface.ON_UNIT && host.equals(place.host())
                ? place.with(place.pose().moved(new Point(0, 0, by)))
                : place;
    }
}
