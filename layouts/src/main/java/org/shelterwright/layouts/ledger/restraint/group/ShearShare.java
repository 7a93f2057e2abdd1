package org.shelterwright.layouts.ledger.restraint.group;

import java.util.List;

/**
 * Shares shear and torsion among bolts: each moves with the base by (u − ω·(t − t0), v + ω·(s − s0)) and bears that times its
 * stiffness. With equal round holes this is F/n, and M·r/Σr² square to the radius r from the centroid.
 */
final class ShearShare {
    private final List<Bolt> bolts;
    private final double centreS;
    private final double centreT;
    private final double sumS;
    private final double sumT;
    private final double polar;

    ShearShare(List<Bolt> bolts) {
        this.bolts = bolts;
        double s = 0;
        double t = 0;
        double ks = 0;
        double kt = 0;
        for (Bolt bolt : bolts) {
            ks += bolt.shearS();
            kt += bolt.shearT();
            s += bolt.shearT() * bolt.s();
            t += bolt.shearS() * bolt.t();
        }
        sumS = ks;
        sumT = kt;
        centreS = kt == 0 ? 0 : s / kt;
        centreT = ks == 0 ? 0 : t / ks;
        double j = 0;
        for (Bolt bolt : bolts) {
            double ds = bolt.s() - centreS;
            double dt = bolt.t() - centreT;
            j += bolt.shearT() * ds * ds + bolt.shearS() * dt * dt;
        }
        polar = j;
    }

    /**
     * Shares a force.
     *
     * @param momentSize moment that counts as large (N·m)
     * @return false if the holes do not bear it: slots that all run one way, or one bolt against torsion
     */
    boolean share(Force force, double momentSize, double[] shearS, double[] shearT) {
        double moment = (force.s() - centreS) * force.alongT() - (force.t() - centreT) * force.alongS();
        boolean turns = Math.abs(moment) > 1e-12 * momentSize;
        if (force.alongS() != 0 && sumS == 0 || force.alongT() != 0 && sumT == 0 || turns && polar < 1e-18) {
            return false;
        }
        double u = sumS == 0 ? 0 : force.alongS() / sumS;
        double v = sumT == 0 ? 0 : force.alongT() / sumT;
        double turn = turns ? moment / polar : 0;
        for (int i = 0; i < shearS.length; i++) {
            Bolt bolt = bolts.get(i);
            shearS[i] = bolt.shearS() * (u - turn * (bolt.t() - centreT));
            shearT[i] = bolt.shearT() * (v + turn * (bolt.s() - centreS));
        }
        return true;
    }
}
