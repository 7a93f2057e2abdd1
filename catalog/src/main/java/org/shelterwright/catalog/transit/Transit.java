package org.shelterwright.catalog.transit;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** All that is known for planning legs, each list in the order in which it was read. */
public record Transit(
        List<TransitCar> cars,
        List<Outline> outlines,
        List<LashingKind> lashings,
        List<LineCategories> lineCategories,
        List<FrictionTable> frictions,
        List<WagonClasses> wagonClasses) {
    public static final Transit NONE = new Transit(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    public Transit {
        cars = once("transit car", cars, TransitCar::id);
        outlines = once("outline", outlines, Outline::id);
        lashings = once("lashing", lashings, LashingKind::id);
        lineCategories = once("table of line categories", lineCategories, LineCategories::id);
        frictions = once("table of friction", frictions, FrictionTable::id);
        wagonClasses = once("table of wagon classes", wagonClasses, WagonClasses::id);
    }

    public Optional<TransitCar> car(String id) {
        return cars.stream().filter(one -> one.id().equals(id)).findFirst();
    }

    public Optional<Outline> outline(String id) {
        return outlines.stream().filter(one -> one.id().equals(id)).findFirst();
    }

    public Optional<LashingKind> lashing(String id) {
        return lashings.stream().filter(one -> one.id().equals(id)).findFirst();
    }

    /** The line category of a name, from the first table that has it. */
    public Optional<LineCategories.Category> lineCategory(String name) {
        return lineCategories.stream()
                .flatMap(table -> table.category(name).stream())
                .findFirst();
    }

    /** The friction of two materials, from the first table that has it. */
    public Optional<FrictionTable.Friction> friction(Underside load, FloorMaterial floor) {
        return frictions.stream()
                .flatMap(table -> table.of(load, floor).stream())
                .findFirst();
    }

    /** The part of friction that counts where a load may stir; 0.75 if no table says. */
    public double dynamicShare() {
        return frictions.isEmpty() ? 0.75 : frictions.get(0).dynamicShare();
    }

    /** These over others: an entry with the same id takes the place of the other. */
    public Transit over(Transit base) {
        return new Transit(
                over(base.cars, cars, TransitCar::id),
                over(base.outlines, outlines, Outline::id),
                over(base.lashings, lashings, LashingKind::id),
                over(base.lineCategories, lineCategories, LineCategories::id),
                over(base.frictions, frictions, FrictionTable::id),
                over(base.wagonClasses, wagonClasses, WagonClasses::id));
    }

    private static <T> List<T> over(Collection<T> base, Collection<T> own, Function<T, String> id) {
        Map<String, T> merged = new LinkedHashMap<>();
        base.forEach(one -> merged.put(id.apply(one), one));
        own.forEach(one -> merged.put(id.apply(one), one));
        return List.copyOf(merged.values());
    }

    private static <T> List<T> once(String kind, List<T> entries, Function<T, String> id) {
        Map<String, T> seen = new LinkedHashMap<>();
        for (T entry : entries) {
            if (seen.putIfAbsent(id.apply(entry), entry) != null) {
                throw new IllegalArgumentException(
                        "The " + kind + " id \"" + id.apply(entry) + "\" is given twice. Rename one of them.");
            }
        }
        return List.copyOf(entries);
    }
}
