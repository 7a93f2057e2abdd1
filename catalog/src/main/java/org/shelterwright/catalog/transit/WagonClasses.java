package org.shelterwright.catalog.transit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Millimetres;

/** What the class letters of wagons guarantee. */
public record WagonClasses(String id, String name, List<WagonClass> classes, Source source) {
    /**
     * The wagons of one leading letter.
     *
     * @param letter such as "R"
     * @param axles of the basic wagon
     */
    public record WagonClass(String letter, String meaning, int axles, List<Base> bases, List<Letter> letters) {
        public WagonClass {
            bases = List.copyOf(bases);
            letters = List.copyOf(letters);
        }
    }

    /**
     * What the leading letter alone guarantees.
     *
     * @param axles for this number of axles
     * @param lengthFrom least loading length (µm)
     * @param lengthBelow loading length that is not reached (µm)
     * @param loadFromKg least greatest load (kg)
     * @param loadToKg greatest (kg)
     */
    public record Base(
            int axles,
            @Nullable @Millimetres Integer lengthFrom,
            @Nullable @Millimetres Integer lengthBelow,
            @Nullable Double loadFromKg,
            @Nullable Double loadToKg) {}

    /**
     * What a further letter changes.
     *
     * @param letters such as "b" or "bb"
     * @param axles only for this number of axles; {@code null} for any
     * @param setsAxles number of axles that it means; {@code null} if it means none
     * @param lengthFrom new least loading length (µm); the other three likewise
     * @param kmh greatest speed that it means (km/h)
     */
    public record Letter(
            String letters,
            String meaning,
            @Nullable Integer axles,
            @Nullable Integer setsAxles,
            @Nullable @Millimetres Integer lengthFrom,
            @Nullable @Millimetres Integer lengthBelow,
            @Nullable Double loadFromKg,
            @Nullable Double loadToKg,
            @Nullable Integer kmh) {
        /** Whether it sets the loading length. */
        boolean setsLength() {
            return lengthFrom != null || lengthBelow != null;
        }

        /** Whether it sets the greatest load. */
        boolean setsLoad() {
            return loadFromKg != null || loadToKg != null;
        }
    }

    public WagonClasses {
        classes = List.copyOf(classes);
    }
}
