package org.shelterwright.layouts.ledger.restraint;

import java.util.OptionalDouble;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rules;

/**
 * Tightening torque {@code M = K F d} for the preload {@code F = s · min(proof load, pull-out strength)}: more would tear the hard
 * point out before the bolt is tight.
 *
 * <p>Source: Shigley's Mechanical Engineering Design, K by finish in table 8-15 (as quoted); the bound by the hard point is common
 * practice.
 */
public final class Torque {
    private Torque() {}

    /**
     * Torque for a preload.
     *
     * @param factor nut factor K
     * @return N·m
     */
    public static double newtonMetres(double factor, double preloadN, double diameterMm) {
        return factor * preloadN * diameterMm / 1000;
    }

    /** Preload of a fixing (N); empty if the rules set no share. */
    public static OptionalDouble preloadN(Rules rules, HeldFixing fixing) {
        OptionalDouble share = rules.value(Figure.PRELOAD_SHARE);
        return share.isEmpty()
                ? share
                : OptionalDouble.of(share.getAsDouble() * Math.min(fixing.bolt().proofN(), fixing.pullOutN()));
    }

    /** Torque of a fixing (N·m); empty if the rules set no share or no factor. */
    public static OptionalDouble of(Rules rules, HeldFixing fixing) {
        OptionalDouble preload = preloadN(rules, fixing);
        OptionalDouble factor = rules.value(Figure.TORQUE_FACTOR);
        return preload.isEmpty() || factor.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(newtonMetres(
                        factor.getAsDouble(),
                        preload.getAsDouble(),
                        fixing.bolt().diameterMm()));
    }
}
