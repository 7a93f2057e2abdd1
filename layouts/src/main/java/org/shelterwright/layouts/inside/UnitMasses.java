package org.shelterwright.layouts.inside;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.catalog.item.Interior;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Support;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.Inventory;
import org.shelterwright.layouts.brief.Task;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.rules.Rules;

/**
 * The mass of every unit with what is in it, in both situations. A unit in which pieces ride weighs its empty mass and theirs;
 * any other what its item states. A piece that is taken out on station lies at its task: on the middle of the unit that it is
 * done at, or outside, and then it does not count.
 */
public final class UnitMasses {
    private UnitMasses() {}

    /** By id of the unit; a unit whose mass is that of its item is left out. Cost: linear in units and pieces. */
    public static Map<String, UnitMass> of(Layout layout, Interiors interiors, Rules rules) {
        Map<String, UnitMass> masses = new LinkedHashMap<>();
        if (interiors.racks().isEmpty() && interiors.stowages().isEmpty()) {
            return masses;
        }
        Map<String, List<Held>> arriving = arriving(layout, interiors);
        for (UnitSpec unit : layout.brief().units()) {
            List<Held> riding = interiors.held(unit.id());
            List<Held> guests = arriving.getOrDefault(unit.id(), List.of());
            if (!riding.isEmpty() || !guests.isEmpty()) {
                masses.put(unit.id(), mass(layout.item(unit), riding, guests, rules));
            }
        }
        return masses;
    }

    /** The pieces that ride elsewhere and are used at a unit on station. */
    public static List<Held> usedAt(Layout layout, Interiors interiors, String unit) {
        return arriving(layout, interiors).getOrDefault(unit, List.of());
    }

    private static Map<String, List<Held>> arriving(Layout layout, Interiors interiors) {
        Inventory inventory = layout.brief().listed();
        Map<String, List<Held>> arriving = new LinkedHashMap<>();
        for (UnitSpec unit : layout.brief().units()) {
            for (Held held : interiors.held(unit.id())) {
                String task = held.spec().takenOut() ? held.spec().task() : null;
                String at = task == null
                        ? null
                        : inventory.task(task).map(Task::unit).orElse(null);
                if (at != null) {
                    arriving.computeIfAbsent(at, key -> new ArrayList<>()).add(held);
                }
            }
        }
        return arriving;
    }

    private static UnitMass mass(Item item, List<Held> riding, List<Held> guests, Rules rules) {
        Interior interior = item.interior();
        MassData empty = riding.isEmpty() ? item.mass() : interior == null ? null : interior.empty();
        MassSum station = new MassSum(rules);
        MassSum road = new MassSum(rules);
        station.add(empty);
        road.add(empty);
        for (Held held : riding) {
            road.add(held.piece().mass(), held.centre(), held.box());
            if (!held.spec().takenOut()) {
                station.add(held.piece().mass(), held.centre(), held.box());
            }
        }
        Point top = workTop(item);
        for (Held held : guests) {
            station.add(held.piece().mass(), top, Box.between(top, top));
        }
        return new UnitMass(station.sum(), road.sum());
    }

    /** The mass of something empty with some of what goes into it. */
    public static MassData sum(MassData empty, List<? extends Held> with, Rules rules) {
        MassSum sum = new MassSum(rules);
        sum.add(empty);
        with.forEach(held -> sum.add(held.piece().mass(), held.centre(), held.box()));
        return sum.sum();
    }

    /** Where what is used at a unit is taken to lie: the middle of its first top, or of its own top. */
    public static Point workTop(Item item) {
        for (Support support : item.supports()) {
            if (!support.under()) {
                Point middle = support.area().at(0, 0).centre();
                return new Point(middle.x(), middle.y(), support.height());
            }
        }
        return new Point(item.size().x() / 2, item.size().y() / 2, item.size().z());
    }
}
