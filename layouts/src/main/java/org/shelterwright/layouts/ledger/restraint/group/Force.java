package org.shelterwright.layouts.ledger.restraint.group;

/**
 * A force on what a group holds.
 *
 * @param alongS along the first axis of the mounting plane (N)
 * @param alongT along the second axis (N)
 * @param off square to the plane, positive away from the surface (N)
 * @param s place where it acts (m)
 * @param t place where it acts (m)
 * @param height distance of that place from the mounting plane (m)
 */
public record Force(double alongS, double alongT, double off, double s, double t, double height) {
    /** Moment of the pull about the second axis through the origin, as the sum of pull times s (N·m). */
    double pullMomentS() {
        return s * off - height * alongS;
    }

    /** The same as the sum of pull times t (N·m). */
    double pullMomentT() {
        return t * off - height * alongT;
    }

    /** Its size, moments divided by a length of the group (N). */
    double size(double lengthM) {
        return Math.abs(alongS)
                + Math.abs(alongT)
                + Math.abs(off)
                + (Math.abs(pullMomentS()) + Math.abs(pullMomentT())) / lengthM;
    }
}
