package org.shelterwright.layouts.ledger.restraint.group;

/**
 * A fixing of a group in space.
 *
 * @param x place (m)
 * @param axis 0 for x, 1 for y, 2 for z: the axis square to the surface that it goes into
 * @param sign +1 if the surface lies on the high side of that axis, else −1
 * @param slot the axis along which its hole is slotted, so that it bears nothing that way; {@link #ROUND} if it is not
 * @param brace true if its surface pushes at the bolt itself; false if what it stands on pushes at the contact points
 */
public record SpaceBolt(double x, double y, double z, int axis, int sign, int slot, boolean brace) {
    /** No axis: the hole is round. */
    public static final int ROUND = -1;
}
