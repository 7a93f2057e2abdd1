package org.shelterwright.layouts.cable;

/**
 * Voltage drop over a wire. Two conductors, direct or alternating current: {@code ΔU = 2 L I r}. Three phases, balanced, against
 * the neutral: {@code ΔU = L I r}. Reactance is left out, which for copper up to 50 mm² is small at 50 and 60 Hz.
 *
 * <p>Source: common formula of wiring handbooks; held against NEC chapter 9, table 8 examples.
 */
public final class VoltageDrop {
    private VoltageDrop() {}

    /**
     * Gives the drop (V), of three phases that between a line and the neutral.
     *
     * @param lengthM length of the cable, one way (m)
     * @param currentA current in each line (A)
     * @param ohmPerM resistance of a conductor (Ω/m)
     */
    public static double volts(int phases, double lengthM, double currentA, double ohmPerM) {
        return (phases == 3 ? 1 : 2) * lengthM * currentA * ohmPerM;
    }
}
