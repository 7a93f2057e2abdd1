package org.shelterwright.catalog.item;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Millimetres;
import org.shelterwright.catalog.space.Point;

/**
 * What is known of the mass of a thing. What is not known is {@code null}, and makes limits "not assessed".
 *
 * @param massKg mass (kg)
 * @param centre centre of mass, in the frame of the thing
 * @param basis how the mass is known
 * @param growthShare expected growth as a share of the mass; {@code null}: by the basis, from the rule set
 * @param uncertaintyKg half width of the range in which the mass lies (kg); {@code null}: by the basis
 * @param centreUncertainty half width of the range in which the centre lies on each axis (µm); {@code null}: zero
 */
public record MassData(
        @Nullable Double massKg,
        @Nullable Point centre,
        MassBasis basis,
        @Nullable Double growthShare,
        @Nullable Double uncertaintyKg,
        @Nullable @Millimetres Integer centreUncertainty) {
    /** Largest mass that one item or body may have (kg); more is taken for a wrong unit. */
    public static final double LARGEST_KG = 100_000;

    public MassData {
        if (massKg != null) {
            Figures.within("mass (kg)", massKg, 0, LARGEST_KG);
        }
        if (growthShare != null) {
            Figures.within("growth share", growthShare, 0, 1);
        }
        if (uncertaintyKg != null) {
            Figures.within("mass uncertainty (kg)", uncertaintyKg, 0, LARGEST_KG);
        }
        if (centreUncertainty != null && centreUncertainty < 0) {
            throw new IllegalArgumentException("The uncertainty of a centre must not be below zero.");
        }
    }

    public static MassData of(double massKg, Point centre, MassBasis basis) {
        return new MassData(massKg, centre, basis, null, null, null);
    }
}
