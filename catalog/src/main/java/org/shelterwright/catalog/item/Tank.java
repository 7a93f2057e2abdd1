package org.shelterwright.catalog.item;

import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.space.Point;

/**
 * A content that comes and goes: fuel, water, samples, or a person's kit. Load states run it from its least to its
 * full mass.
 *
 * @param name such as "fuel tank"
 * @param centre centre of mass of the content, in the frame of what holds it
 * @param leastKg least mass that a load state takes (kg)
 * @param fullKg mass when full (kg)
 */
public record Tank(String name, Point centre, double leastKg, double fullKg) {
    public Tank {
        Figures.notNegative("least mass (kg)", leastKg);
        Figures.within("full mass (kg)", fullKg, leastKg, MassData.LARGEST_KG);
    }
}
