package org.shelterwright.catalog.cable;

import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.source.Source;

/**
 * A series of conductor sizes with their greatest resistances.
 *
 * @param id unique in a catalog, such as "iec-60228-copper"
 * @param sizes rising in cross-section
 */
public record ConductorTable(String id, String name, Source source, List<Row> sizes) {
    public ConductorTable {
        sizes = List.copyOf(sizes);
        for (int i = 1; i < sizes.size(); i++) {
            if (sizes.get(i).areaMm2() <= sizes.get(i - 1).areaMm2()) {
                throw new IllegalArgumentException("The sizes of table " + id + " must rise, but "
                        + sizes.get(i).areaMm2() + " mm² follows "
                        + sizes.get(i - 1).areaMm2() + " mm².");
            }
        }
    }

    /**
     * One size.
     *
     * @param areaMm2 nominal cross-section (mm²)
     * @param class2OhmPerKm greatest resistance of stranded conductors at 20 °C (Ω/km); {@code null} if not known
     * @param class5OhmPerKm the same of flexible conductors
     */
    public record Row(
            double areaMm2,
            @Nullable Double class2OhmPerKm,
            @Nullable Double class5OhmPerKm) {
        public Row {
            Figures.positive("cross-section (mm²)", areaMm2);
            if (class2OhmPerKm != null) {
                Figures.positive("resistance (Ω/km)", class2OhmPerKm);
            }
            if (class5OhmPerKm != null) {
                Figures.positive("resistance (Ω/km)", class5OhmPerKm);
            }
        }
    }

    /** The greatest resistance of a size (Ω/km); empty if the table does not hold it. */
    public OptionalDouble ohmPerKm(double areaMm2, int strandClass) {
        for (Row row : sizes) {
            Double value = strandClass == 2 ? row.class2OhmPerKm() : strandClass == 5 ? row.class5OhmPerKm() : null;
            if (row.areaMm2() == areaMm2 && value != null) {
                return OptionalDouble.of(value);
            }
        }
        return OptionalDouble.empty();
    }
}
