package org.shelterwright.app.desk.list;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Placement;

/** One line of the equipment list. */
sealed interface Entry {
    /** A heading with what stands at its right. */
    record Heading(String words, String figure) implements Entry {}

    /**
     * A unit.
     *
     * @param mass in words; "no mass" if the catalog gives none
     */
    record Unit(String id, String name, String mass, boolean placed, boolean pinned) implements Entry {}

    /**
     * The lines of a layout.
     *
     * @param typed words that name, item, group or mass must begin with or hold; blank: all
     */
    static List<Entry> of(Layout layout, String typed) {
        List<Entry> toPlace = new ArrayList<>();
        List<Entry> placed = new ArrayList<>();
        double placedKg = 0;
        for (UnitSpec spec : layout.brief().units()) {
            Item item = layout.item(spec);
            Placement placement = layout.placements().get(spec.id());
            Double massKg = item.mass().massKg();
            String mass = mass(item);
            if (placement != null && massKg != null) {
                placedKg += massKg;
            }
            if (matches(spec, item, mass, typed)) {
                boolean pinned = placement != null && !placement.pin().equals(Pin.NONE);
                (placement == null ? toPlace : placed)
                        .add(new Unit(spec.id(), spec.name(), mass, placement != null, pinned));
            }
        }
        List<Entry> all = new ArrayList<>();
        add(all, new Heading("To place", String.valueOf(toPlace.size())), toPlace);
        add(all, new Heading("Placed", Numerals.of(placedKg, 0) + Numerals.GAP + "kg"), placed);
        return all;
    }

    /** The mass of an item in words. */
    static String mass(Item item) {
        Double massKg = item.mass().massKg();
        return massKg == null ? "no mass" : Numerals.short3(massKg) + Numerals.GAP + "kg";
    }

    private static void add(List<Entry> all, Heading heading, List<Entry> units) {
        if (!units.isEmpty()) {
            all.add(heading);
            all.addAll(units);
        }
    }

    private static boolean matches(UnitSpec spec, Item item, String mass, String typed) {
        @Nullable String group = spec.group();
        String text = (spec.name() + " " + item.name() + " " + group + " " + mass).toLowerCase(Locale.ROOT);
        return List.of(typed.strip().toLowerCase(Locale.ROOT).split("\\s+")).stream()
                .allMatch(text::contains);
    }
}
