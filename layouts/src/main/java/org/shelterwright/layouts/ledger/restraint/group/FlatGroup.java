package org.shelterwright.layouts.ledger.restraint.group;

import java.util.List;

/**
 * A group whose bolts all leave through one mounting plane.
 *
 * <p>Model: the base is rigid; bolts are springs that pull only and are not preloaded; the surface is rigid and pushes only, at
 * the corners of the convex hull of what touches it (a rigid base that lifts anywhere touches at no other place). Shear is shared
 * by the stiffness of the bolts with torsion about their centroid; friction carries nothing.
 *
 * <p>Pull: either the load presses inside the hull and no bolt pulls; or the base turns about an edge of the hull (then pull is
 * M·L/ΣL² with the distances L from it), or about a corner, or lifts off altogether. All are tried; the one whose forces balance
 * with no pull and no pressure below zero is the state, and the pulls in it are unique, since the energy is convex.
 *
 * <p>Not for several threads: it keeps work space.
 */
public final class FlatGroup {
    private final List<Bolt> bolts;
    private final List<Spot> hull;
    private final PullSearch pulls;
    private final ShearShare shears;
    private final double lengthM;

    /**
     * @param bolts at least one
     * @param contact points that touch the surface; their hull counts; none, or without area: nothing pushes
     */
    public FlatGroup(List<Bolt> bolts, List<Spot> contact) {
        if (bolts.isEmpty()) {
            throw new IllegalArgumentException("A fixing group needs a bolt.");
        }
        this.bolts = List.copyOf(bolts);
        hull = Hull.of(contact);
        lengthM = length();
        pulls = new PullSearch(this.bolts, hull);
        shears = new ShearShare(this.bolts);
    }

    /** The contact points in the order of the pressures: the corners of the hull. */
    public List<Spot> contact() {
        return hull;
    }

    /** What a force puts on each bolt. Cost: bolts times corners of the hull. */
    public GroupForces under(Force force) {
        double size = force.size(lengthM);
        GroupForces forces = GroupForces.none(bolts.size(), hull.size());
        boolean held = size == 0
                || pulls.find(
                                force.off(),
                                force.pullMomentS(),
                                force.pullMomentT(),
                                size,
                                forces.pullN(),
                                forces.pressN())
                        && shears.share(force, size * lengthM, forces.shearS(), forces.shearT());
        return new GroupForces(held, forces.pullN(), forces.shearS(), forces.shearT(), forces.pressN());
    }

    private double length() {
        double lowS = Double.POSITIVE_INFINITY;
        double highS = Double.NEGATIVE_INFINITY;
        double lowT = Double.POSITIVE_INFINITY;
        double highT = Double.NEGATIVE_INFINITY;
        for (Bolt bolt : bolts) {
            lowS = Math.min(lowS, bolt.s());
            highS = Math.max(highS, bolt.s());
            lowT = Math.min(lowT, bolt.t());
            highT = Math.max(highT, bolt.t());
        }
        for (Spot spot : hull) {
            lowS = Math.min(lowS, spot.s());
            highS = Math.max(highS, spot.s());
            lowT = Math.min(lowT, spot.t());
            highT = Math.max(highT, spot.t());
        }
        return Math.max(1e-3, Math.hypot(highS - lowS, highT - lowT));
    }
}
