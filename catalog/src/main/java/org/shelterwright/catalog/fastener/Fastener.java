package org.shelterwright.catalog.fastener;

/**
 * A bolt of one thread and property class.
 *
 * @param thread such as "M10"
 * @param grade property class, such as "8.8"
 * @param stressAreaMm2 tensile stress area (mm²)
 * @param proofN proof load (N)
 * @param ultimateN least ultimate tensile load (N)
 */
public record Fastener(
        String thread,
        String grade,
        double diameterMm,
        double pitchMm,
        double stressAreaMm2,
        double proofN,
        double ultimateN) {}
