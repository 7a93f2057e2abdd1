package org.shelterwright.layouts.study;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What one setting of an axis changes of the brief; nothing, if it is what the brief asks anyway.
 *
 * @param id unique in its axis, such as "box-6000"
 * @param body id of another body; {@code null}: that of the brief
 * @param carrier id of another carrier; {@code null}: that of the brief
 * @param swaps units that become ones of another item
 * @param quantities how many there are of some units
 * @param items items that come otherwise than the catalog says
 * @param cars what loads of a journey go on, and how many of each there are
 * @param limits values of figures, over those of the brief
 * @param ruleSets ids of the rule sets that apply instead; empty: those of the brief
 * @param crew people in the cab; {@code null}: as many as the brief says
 * @param note one sentence for people; {@code null} if there is none
 */
public record Setting(
        String id,
        @Nullable String body,
        @Nullable String carrier,
        List<Swap> swaps,
        List<Quantity> quantities,
        List<ItemChange> items,
        List<CarCount> cars,
        Map<String, Double> limits,
        List<String> ruleSets,
        @Nullable Integer crew,
        @Nullable String note) {
    public Setting {
        swaps = List.copyOf(swaps);
        quantities = List.copyOf(quantities);
        items = List.copyOf(items);
        cars = List.copyOf(cars);
        limits = Collections.unmodifiableMap(new LinkedHashMap<>(limits));
        ruleSets = List.copyOf(ruleSets);
        if (crew != null && (crew < 0 || crew > 100)) {
            throw new IllegalArgumentException("The crew of " + crew + " must be from 0 to 100.");
        }
    }

    /** A setting that changes nothing. */
    public static Setting asAsked(String id) {
        return new Setting(id, null, null, List.of(), List.of(), List.of(), List.of(), Map.of(), List.of(), null, null);
    }

    /**
     * A unit that becomes one of another item.
     *
     * @param unit id of a unit of the brief
     * @param item id of its new catalog entry
     */
    public record Swap(String unit, String item) {}

    /**
     * How many cars of one type there are for a load of a journey: the load becomes as many, on all its legs.
     *
     * @param load id of a load of the journey
     * @param car id of a transit car; {@code null}: that of the load
     */
    public record CarCount(String load, @Nullable String car, int count) {
        /** Most cars of one load. */
        public static final int MOST = 200;

        public CarCount {
            if (count < 0 || count > MOST) {
                throw new IllegalArgumentException("The number of cars for the load \"" + load + "\", " + count
                        + ", must be from 0 to " + MOST + ".");
            }
        }
    }

    /**
     * How many there are of one unit: itself and copies of it, or none at all.
     *
     * @param unit id of a unit of the brief
     */
    public record Quantity(String unit, int count) {
        /** Most copies of one unit. */
        public static final int MOST = 500;

        public Quantity {
            if (count < 0 || count > MOST) {
                throw new IllegalArgumentException(
                        "The number of units like \"" + unit + "\", " + count + ", must be from 0 to " + MOST + ".");
            }
        }
    }
}
