package org.shelterwright.layouts.ledger.floor;

import org.shelterwright.catalog.body.CrossMember;
import org.shelterwright.catalog.space.Lengths;

/**
 * Bending moment and shear of a simply supported beam under uniform loads on parts of it, exact: the moment is taken at every edge
 * of a load, at the supports, and wherever the shear goes through zero. Loads beyond a support hang over it.
 *
 * <p>Source of the formulas that it must agree with: beam tables of AISC (partial uniform load).
 *
 * @param momentKgM greatest bending moment either way, as mass (kg·m)
 * @param shearKg greatest shear either way, as mass (kg)
 */
record BeamSweep(double momentKgM, double shearKg) {
    /**
     * Sweeps over a beam.
     *
     * @param edges numbers of the load edges in their order along the beam: 2k low, 2k + 1 high
     * @param low low edges of the loads (µm)
     * @param high high edges of the loads (µm)
     * @param loads what each load weighs in all (kg)
     */
    static BeamSweep of(CrossMember member, int[] edges, int[] low, int[] high, double[] loads) {
        double a = Lengths.metres(member.support0());
        double b = Lengths.metres(member.support1());
        double total = 0;
        double atB = 0;
        for (int k = 0; k < loads.length; k++) {
            total += loads[k];
            atB += loads[k] * ((Lengths.metres(low[k]) + Lengths.metres(high[k])) / 2 - a);
        }
        atB /= b - a;
        Sweep sweep = new Sweep();
        boolean passedA = false;
        boolean passedB = false;
        for (int edge : edges) {
            int k = edge >> 1;
            boolean starts = (edge & 1) == 0;
            double y = Lengths.metres(starts ? low[k] : high[k]);
            if (!passedA && y >= a) {
                sweep.to(a);
                sweep.push(total - atB);
                passedA = true;
            }
            if (!passedB && y >= b) {
                sweep.to(b);
                sweep.push(atB);
                passedB = true;
            }
            sweep.to(y);
            double perMetre = loads[k] / Lengths.metres(high[k] - low[k]);
            sweep.perMetre += starts ? perMetre : -perMetre;
        }
        if (!passedA && total != 0) {
            sweep.to(a);
            sweep.push(total - atB);
        }
        return new BeamSweep(sweep.most, sweep.mostShear);
    }

    private static final class Sweep {
        private double at = Double.NEGATIVE_INFINITY;
        private double perMetre;
        private double shear;
        private double moment;
        private double most;
        private double mostShear;

        void to(double y) {
            double way = y - at;
            if (way > 0 && at > Double.NEGATIVE_INFINITY) {
                double zero = perMetre == 0 ? -1 : shear / perMetre;
                if (zero > 0 && zero < way) {
                    most = Math.max(most, Math.abs(moment + shear * zero / 2));
                }
                moment += (shear - perMetre * way / 2) * way;
                shear -= perMetre * way;
            }
            at = y;
            most = Math.max(most, Math.abs(moment));
            mostShear = Math.max(mostShear, Math.abs(shear));
        }

        void push(double force) {
            shear += force;
            mostShear = Math.max(mostShear, Math.abs(shear));
        }
    }
}
