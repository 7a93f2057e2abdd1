package org.shelterwright.catalog.plausible;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.cable.Conductors;
import org.shelterwright.catalog.space.Lengths;

/**
 * What is odd about a cable. Bounds: a copper conductor of area A has at least 17.0 Ω·mm²/km at 20 °C and at most some 22 of a
 * fine strand, tinned (from memory); no cable is heavier than a rod of copper of its size.
 */
public final class CableOddities {
    private static final int THINNEST = 500;
    private static final int THICK = 60 * Lengths.MM;
    private static final int THICKEST = 200 * Lengths.MM;
    private static final double COPPER_KG_M3 = 8_960;
    private static final double LEAST_OHM_MM2_KM = 16.9;
    private static final double MOST_OHM_MM2_KM = 23;

    private CableOddities() {}

    public static List<Oddity> of(Cable cable) {
        List<Oddity> found = new ArrayList<>();
        String diameter = "The diameter of " + Lengths.format(cable.diameter()) + " mm of cable " + cable.id();
        if (cable.diameter() < THINNEST || cable.diameter() > THICKEST) {
            found.add(Oddity.absurd(
                    "diameter", diameter + " is not from 0.5 to 200 mm. Lengths are in millimetres: correct it."));
        } else if (cable.diameter() > THICK) {
            found.add(Oddity.doubtful("diameter", diameter + " is above 60 mm. Is it right?"));
        }
        mass(cable, cable.massKgPerM(), found);
        conductors(cable, cable.conductors(), found);
        return found;
    }

    private static void mass(Cable cable, @Nullable Double kgPerM, List<Oddity> found) {
        if (kgPerM != null && kgPerM > cable.areaMm2() * 1e-6 * COPPER_KG_M3) {
            found.add(Oddity.absurd(
                    "massKgPerM",
                    "The mass of " + kgPerM + " kg/m of cable " + cable.id()
                            + " is more than that of a rod of copper of its diameter. Correct one of them."));
        }
    }

    private static void conductors(Cable cable, @Nullable Conductors of, List<Oddity> found) {
        if (of == null) {
            return;
        }
        if (of.count() * of.areaMm2() > cable.areaMm2()) {
            found.add(Oddity.absurd(
                    "conductors",
                    "The conductors of cable " + cable.id() + ", " + of.count() + " x " + of.areaMm2()
                            + " mm², are larger than the cable. Correct them or the diameter."));
        }
        double ohmMm2PerKm = of.ohmPerKm() * of.areaMm2();
        if (ohmMm2PerKm < LEAST_OHM_MM2_KM || ohmMm2PerKm > MOST_OHM_MM2_KM) {
            found.add(Oddity.doubtful(
                    "conductors",
                    "The resistance of " + of.ohmPerKm() + " ohm/km of cable " + cable.id()
                            + " is not that of copper of " + of.areaMm2() + " mm². Is it right?"));
        }
    }
}
