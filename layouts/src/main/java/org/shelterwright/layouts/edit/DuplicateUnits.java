package org.shelterwright.layouts.edit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;

/**
 * Adds a copy of each unit to the end of the brief, with the next free number in its id and name. Copies of placed units are
 * placed too, shifted, and not pinned; a copy stands on the copy of its host if that is made too.
 *
 * @param units ids of the units; none twice
 * @param shift from each unit to its copy
 */
public record DuplicateUnits(List<String> units, Point shift) implements Edit {
    public DuplicateUnits {
        units = List.copyOf(new LinkedHashSet<>(units));
        if (units.isEmpty()) {
            throw new IllegalArgumentException("Name at least one unit to duplicate.");
        }
    }

    @Override
    public String name() {
        return "Duplicate " + String.join(", ", units);
    }

    @Override
    public Layout apply(Layout layout) {
        List<UnitSpec> specs = new ArrayList<>(layout.brief().units());
        Set<String> ids = new HashSet<>();
        Units.ofAll(layout.brief()).forEach(one -> ids.add(one.id()));
        Map<String, String> copies = new LinkedHashMap<>();
        for (String id : units) {
            UnitSpec copy = copy(Units.require(layout, id), ids);
            copies.put(id, copy.id());
            specs.add(copy);
        }
        Layout wider = Units.with(
                layout, layout.brief().withUnits(specs), layout.parts().items());
        Map<String, Placement> placements = new LinkedHashMap<>(layout.placements());
        copies.forEach((id, copy) -> {
            Placement placed = layout.placements().get(id);
            if (placed != null) {
                Place road = placed.road();
                placements.put(
                        copy,
                        new Placement(
                                copy,
                                shifted(placed.station(), copies),
                                road == null ? null : shifted(road, copies),
                                Pin.NONE));
            }
        });
        return wider.withPlacements(placements);
    }

    private Place shifted(Place place, Map<String, String> copies) {
        @Nullable String host = place.host();
        return new Place(
                place.surface(),
                host == null ? null : copies.getOrDefault(host, host),
                place.pose().moved(shift));
    }

    private static UnitSpec copy(UnitSpec unit, Set<String> ids) {
        int digits = digits(unit.id());
        String stem = unit.id().substring(0, unit.id().length() - digits);
        boolean numbered = digits > 0 && digits < 9 && !stem.isEmpty();
        int number = numbered ? Integer.parseInt(unit.id().substring(stem.length())) : 1;
        String base = numbered ? stem : unit.id() + "-";
        do {
            number++;
        } while (!ids.add(base + number));
        String name = unit.name().substring(0, unit.name().length() - digits(unit.name()));
        return new UnitSpec(base + number, name.stripTrailing() + " " + number, unit.item(), unit.group());
    }

    /** How many digits a text ends in. */
    private static int digits(String text) {
        int at = text.length();
        while (at > 0 && text.charAt(at - 1) >= '0' && text.charAt(at - 1) <= '9') {
            at--;
        }
        return text.length() - at;
    }
}
