package org.shelterwright.layouts.ledger.restraint.group;

import java.util.ArrayList;
import java.util.List;

/**
 * A group that leaves through more than one plane, such as bolts in the floor and braces at the wall.
 *
 * <p>Model: as {@link FlatGroup}, in space: the thing is rigid with six small motions; each bolt is as stiff in shear as in
 * pull; the surface that it stands on pushes at the contact points, ten thousand times as stiff as a bolt; at a brace the wall
 * pushes at the bolt. Which bolts pull and where it presses is found by iteration.
 *
 * <p>Not for several threads: it keeps work space.
 */
public final class BracedGroup {
    private static final double CONTACT_STIFFNESS = 1e4;

    private final List<SpaceBolt> bolts;
    private final int contacts;
    private final Springs springs;

    /**
     * @param contact corners of what stands on the surface, with the axis and side of that surface
     */
    public BracedGroup(List<SpaceBolt> bolts, List<SpaceBolt> contact) {
        this.bolts = List.copyOf(bolts);
        contacts = contact.size();
        List<double[]> rows = new ArrayList<>();
        int count = 3 * bolts.size() + contacts;
        double[] stiffness = new double[count];
        boolean[] oneWay = new boolean[count];
        for (SpaceBolt bolt : bolts) {
            for (int axis = 0; axis < 3; axis++) {
                boolean square = axis == bolt.axis();
                stiffness[rows.size()] = axis == bolt.slot() ? 0 : 1;
                oneWay[rows.size()] = square && !bolt.brace();
                rows.add(row(bolt, axis, square ? -bolt.sign() : 1));
            }
        }
        for (SpaceBolt spot : contact) {
            stiffness[rows.size()] = CONTACT_STIFFNESS;
            oneWay[rows.size()] = true;
            rows.add(row(spot, spot.axis(), spot.sign()));
        }
        springs = new Springs(rows.toArray(new double[0][]), stiffness, oneWay, 6);
    }

    /** What a force (N) at a place (m) puts on each bolt; its shear counts along the two axes of its surface. */
    public GroupForces under(double fx, double fy, double fz, double x, double y, double z) {
        double[] load = {fx, fy, fz, y * fz - z * fy, z * fx - x * fz, x * fy - y * fx};
        double size = Math.abs(fx) + Math.abs(fy) + Math.abs(fz);
        GroupForces forces = GroupForces.none(bolts.size(), contacts);
        boolean held = size == 0 || springs.solve(load, size);
        if (held) {
            for (int i = 0; i < bolts.size(); i++) {
                int square = bolts.get(i).axis();
                forces.pullN()[i] = Math.max(0, springs.force(3 * i + square));
                forces.shearS()[i] = springs.force(3 * i + (square == 0 ? 1 : 0));
                forces.shearT()[i] = springs.force(3 * i + (square == 2 ? 1 : 2));
            }
            for (int j = 0; j < contacts; j++) {
                forces.pressN()[j] = springs.force(3 * bolts.size() + j);
            }
        }
        return new GroupForces(held, forces.pullN(), forces.shearS(), forces.shearT(), forces.pressN());
    }

    private static double[] row(SpaceBolt at, int axis, int sign) {
        double ex = axis == 0 ? sign : 0;
        double ey = axis == 1 ? sign : 0;
        double ez = axis == 2 ? sign : 0;
        return new double[] {ex, ey, ez, at.y() * ez - at.z() * ey, at.z() * ex - at.x() * ez, at.x() * ey - at.y() * ex
        };
    }
}
