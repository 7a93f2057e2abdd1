package org.shelterwright.catalog.table;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Units that tables use, with their exact factors to millimetres and kilograms.
 *
 * <p>Source: international yard and pound agreement of 1959: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, both exact.
 */
public enum Unit {
    MM(Dimension.LENGTH, "1", "mm", "millimetre", "millimetres", "millimeter", "millimeters"),
    CM(Dimension.LENGTH, "10", "cm", "centimetre", "centimetres", "centimeter", "centimeters"),
    M(Dimension.LENGTH, "1000", "m", "metre", "metres", "meter", "meters"),
    IN(Dimension.LENGTH, "25.4", "in", "inch", "inches", "\"", "\u2033"),
    FT(Dimension.LENGTH, "304.8", "ft", "foot", "feet"),
    KG(Dimension.MASS, "1", "kg", "kgs", "kilogram", "kilograms"),
    G(Dimension.MASS, "0.001", "g", "gram", "grams"),
    LB(Dimension.MASS, "0.45359237", "lb", "lbs", "pound", "pounds"),
    T(Dimension.MASS, "1000", "t", "tonne", "tonnes");

    /** What is measured. */
    public enum Dimension {
        LENGTH,
        MASS
    }

    private final Dimension dimension;
    private final BigDecimal factor;
    private final List<String> spellings;

    Unit(Dimension dimension, String factor, String... spellings) {
        this.dimension = dimension;
        this.factor = new BigDecimal(factor);
        this.spellings = List.of(spellings);
    }

    public Dimension dimension() {
        return dimension;
    }

    public String symbol() {
        return spellings.get(0);
    }

    /** Millimetres or kilograms in the given number of this unit, exact. */
    BigDecimal toBase(BigDecimal number) {
        return number.multiply(factor);
    }

    static Optional<Unit> of(String spelling) {
        String wanted = spelling.strip().toLowerCase(Locale.ROOT);
        String plain = wanted.endsWith(".") ? wanted.substring(0, wanted.length() - 1) : wanted;
        for (Unit unit : values()) {
            if (unit.spellings.contains(plain)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }
}
