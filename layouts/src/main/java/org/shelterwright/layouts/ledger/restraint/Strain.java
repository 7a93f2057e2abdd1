package org.shelterwright.layouts.ledger.restraint;

/**
 * The most used part of a group.
 *
 * @param fixing its number in the group
 * @param push what pushes
 * @param pullN pull on the fixing (N)
 * @param shearN shear on the fixing (N)
 * @param ofBolt true if the bolt governs, false if what takes it does
 * @param use share of its strength
 */
public record Strain(int fixing, Push push, double pullN, double shearN, boolean ofBolt, double use) {}
