package org.shelterwright.layouts.ledger.restraint.group;

/**
 * A fixing of a flat group.
 *
 * @param s its place along the first axis of the mounting plane (m)
 * @param t its place along the second axis (m)
 * @param pullStiffness stiffness square to the plane, against that of the others; above zero
 * @param shearS stiffness along the first axis, against that of the others; zero in a hole slotted along it
 * @param shearT stiffness along the second axis; zero in a hole slotted along it
 */
public record Bolt(double s, double t, double pullStiffness, double shearS, double shearT) {
    /** A bolt in a round hole, as stiff as every other one. */
    public static Bolt at(double s, double t) {
        return new Bolt(s, t, 1, 1, 1);
    }
}
