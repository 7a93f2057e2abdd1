package org.shelterwright.catalog.transit;

import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.source.Source;

/** A table of line categories: what each axle and each metre of a wagon may weigh. */
public record LineCategories(String id, String name, List<Category> categories, Source source) {
    /**
     * One category.
     *
     * @param name such as "D4"
     * @param axleKg greatest load of an axle (kg)
     * @param perMetreKg greatest mass on a metre over buffers (kg/m)
     */
    public record Category(String name, double axleKg, double perMetreKg) {
        /** The letter that tables of wagons name, such as "D". */
        public String letter() {
            return name.isEmpty() ? "" : name.substring(0, 1);
        }

        public boolean takes(double axle, double perMetre) {
            return axle <= axleKg && perMetre <= perMetreKg;
        }
    }

    public LineCategories {
        categories = List.copyOf(categories);
    }

    public Optional<Category> category(String named) {
        return categories.stream().filter(one -> one.name().equals(named)).findFirst();
    }

    /** The first category, in the order of the table, that takes a wagon; empty if none does. */
    public Optional<Category> least(double axleKg, double perMetreKg) {
        return categories.stream().filter(one -> one.takes(axleKg, perMetreKg)).findFirst();
    }
}
