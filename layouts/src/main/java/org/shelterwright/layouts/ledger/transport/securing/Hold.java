package org.shelterwright.layouts.ledger.transport.securing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.ledger.transport.Gravity;

/**
 * What holds a bundle against sliding under one push:
 *
 * <pre>
 *   m g c  &lt;=  µ' m g c_z  +  Σ 2 µ sin α F_T / f_s  +  F_B  +  F Σ (µ' sin α + cos α cos β)
 * </pre>
 *
 * with µ' = 0.75 µ where direct lashings let it stir, else µ; F_T the tension of tie-downs but not above half their capacity; F_B what
 * blocks bear; and F the same force in each direct lashing that pulls against the push, at most what the weakest bears. Against a push up
 * lashings and locked spigots hold alone.
 *
 * <p>Source: EN 12195-1:2010, sliding with friction lashings, direct lashings and blocking (formulas from memory; f_s and k = 2 seen
 * quoted); CTU Code, annex 7, the same.
 *
 * @param needN m g c
 * @param frictionN by weight
 * @param tieDownN by tie-downs
 * @param blockN by blocks
 * @param lashingSum Σ (µ' sin α + cos α cos β), or Σ sin α against a push up
 * @param weakestN what the weakest direct lashing that counts bears (N); 0 if there is none
 * @param missing what is not known; {@code null} if all is
 */
public record Hold(
        Push push,
        double needN,
        double frictionN,
        double tieDownN,
        double blockN,
        double lashingSum,
        double weakestN,
        @Nullable String missing) {
    private static final double LEAST_PART = 0.05;

    /**
     * Calculates.
     *
     * @param friction static factor µ
     * @param dynamicShare what of it counts beside direct lashings
     */
    public static Hold of(Bundle bundle, Push push, double friction, double dynamicShare) {
        boolean up = push.toward() == Face.TOP;
        double weight = bundle.kg() * Gravity.STANDARD;
        List<Rope> direct = bundle.ropes().stream().filter(Rope::direct).toList();
        double factor = direct.isEmpty() ? friction : dynamicShare * friction;
        Blocking blocking = Blocking.of(bundle, push.toward());
        String missing = blocking.missing();
        double tieDown = 0;
        double sum = 0;
        double weakest = Double.MAX_VALUE;
        for (Rope rope : bundle.ropes()) {
            if (!rope.direct()) {
                tieDown += up
                        ? 2 * rope.sine() * tension(rope)
                        : 2 * friction * rope.sine() * tension(rope) / push.factor();
                continue;
            }
            double against = up ? rope.sine() : -push.along(rope.alongX(), rope.alongY());
            if (against > LEAST_PART) {
                sum += up ? against : factor * rope.sine() + against;
                Double bears = rope.bearsN();
                if (bears == null) {
                    missing = missing == null ? rope.unknown().orElse(null) : missing;
                } else {
                    weakest = Math.min(weakest, bears);
                }
            }
        }
        return new Hold(
                push,
                weight * push.g(),
                up ? 0 : factor * weight * push.downG(),
                tieDown,
                up ? blocking.upN() : blocking.holdsN(),
                sum,
                sum == 0 || weakest == Double.MAX_VALUE ? 0 : weakest,
                missing);
    }

    /** The force that counts in a tie-down: its tension, but not above half of what it bears (N). */
    static double tension(Rope rope) {
        Double tension = rope.kind().tensionN();
        Double anchor = rope.anchorN();
        double half = 0.5 * rope.kind().capacityN();
        double counted = tension == null ? 0 : Math.min(tension, half);
        return anchor == null ? counted : Math.min(counted, anchor);
    }

    /** All that holds (N). */
    public double holdsN() {
        return frictionN + tieDownN + blockN + lashingSum * weakestN;
    }

    /** The force in each direct lashing that counts, under this push (N). */
    public double lashingN() {
        double left = needN - frictionN - tieDownN - blockN;
        return lashingSum == 0 || left <= 0 ? 0 : left / lashingSum;
    }

    public double use() {
        return holdsN() <= 0 ? (needN > 0 ? Double.MAX_VALUE : 0) : needN / holdsN();
    }
}
