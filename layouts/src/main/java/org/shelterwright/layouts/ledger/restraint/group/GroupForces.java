package org.shelterwright.layouts.ledger.restraint.group;

/**
 * What a force puts on a group.
 *
 * @param held whether the group holds it at all; the other figures count only if it does
 * @param pullN pull on each bolt, never below zero (N)
 * @param shearS shear on each bolt along the first axis (N)
 * @param shearT shear along the second axis (N)
 * @param pressN pressure on each contact point, never below zero (N)
 */
@SuppressWarnings("ArrayRecordComponent") // Made some ten thousand times a ledger, and never compared.
public record GroupForces(boolean held, double[] pullN, double[] shearS, double[] shearT, double[] pressN) {
    /** The shear on a bolt (N). */
    public double shearN(int bolt) {
        return Math.hypot(shearS[bolt], shearT[bolt]);
    }

    static GroupForces none(int bolts, int contacts) {
        return new GroupForces(false, new double[bolts], new double[bolts], new double[bolts], new double[contacts]);
    }
}
