package org.shelterwright.layouts.state;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rules;

/**
 * Growth and uncertainty of masses. The mass that counts is {@code m·(1 + growth)}; it lies within ± its uncertainty, in
 * kg as its data say or else a share of m by how the mass is known.
 */
public final class MassModel {
    private final Map<MassBasis, OptionalDouble> growth = new EnumMap<>(MassBasis.class);
    private final Map<MassBasis, OptionalDouble> uncertainty = new EnumMap<>(MassBasis.class);

    public MassModel(Rules rules) {
        for (MassBasis basis : MassBasis.values()) {
            growth.put(basis, rules.value(Figure.growth(basis)));
            uncertainty.put(basis, rules.value(Figure.uncertainty(basis)));
        }
    }

    /** Expected growth as a share of the mass; empty if neither the data nor the rules state it. */
    public OptionalDouble growthShare(MassData data) {
        Double own = data.growthShare();
        return own != null ? OptionalDouble.of(own) : byBasis(growth, data.basis());
    }

    /** Mass with growth (kg); empty if the mass or its growth is not stated. */
    public OptionalDouble grownKg(MassData data) {
        Double massKg = data.massKg();
        OptionalDouble share = growthShare(data);
        return massKg == null || share.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(massKg * (1 + share.getAsDouble()));
    }

    /** Half width of the range of the mass (kg); empty if the mass or its uncertainty is not stated. */
    public OptionalDouble uncertaintyKg(MassData data) {
        Double massKg = data.massKg();
        Double own = data.uncertaintyKg();
        if (massKg == null || own != null) {
            return massKg == null || own == null ? OptionalDouble.empty() : OptionalDouble.of(own);
        }
        OptionalDouble share = byBasis(uncertainty, data.basis());
        return share.isEmpty() ? share : OptionalDouble.of(massKg * share.getAsDouble());
    }

    /** The figure that the rules must set before this mass can count; {@code null} if none is missing. */
    @Nullable
    Figure missingFigure(MassData data) {
        if (growthShare(data).isEmpty()) {
            return Figure.growth(data.basis());
        }
        boolean stated = data.uncertaintyKg() != null
                || byBasis(uncertainty, data.basis()).isPresent();
        return stated ? null : Figure.uncertainty(data.basis());
    }

    private static OptionalDouble byBasis(Map<MassBasis, OptionalDouble> shares, MassBasis basis) {
        return shares.getOrDefault(basis, OptionalDouble.empty());
    }
}
