package org.shelterwright.layouts.statement;

import java.util.List;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;

/**
 * Adds up inertia about the datum by the parallel axis theorem {@code I = I_c + m d²}, and brings it to the common centre at the
 * end. A unit is its solids with one density, about the centre of mass that its data state; a body is the shell between its
 * outside and inside.
 */
final class InertiaSum {
    private Inertia aboutDatum = Inertia.NONE;
    private double massKg;
    private double momentX;
    private double momentY;
    private double momentZ;

    /** Adds a mass with what it has about its own centre. */
    void add(double kg, Point centre, Inertia own) {
        double x = Lengths.metres(centre.x());
        double y = Lengths.metres(centre.y());
        double z = Lengths.metres(centre.z());
        aboutDatum = aboutDatum.plus(own).plus(Inertia.ofPoint(kg, x, y, z));
        massKg += kg;
        momentX += kg * x;
        momentY += kg * y;
        momentZ += kg * z;
    }

    /** What it all has about its common centre of mass; none if there is no mass. */
    Inertia aboutCentre() {
        return massKg == 0
                ? Inertia.NONE
                : aboutDatum.minus(Inertia.ofPoint(massKg, momentX / massKg, momentY / massKg, momentZ / massKg));
    }

    /** A mass spread evenly over solids, about the centroid of their volume. */
    static Inertia ofSolids(double kg, List<Box> solids) {
        double volume = solids.stream().mapToDouble(Box::volumeM3).sum();
        InertiaSum sum = new InertiaSum();
        for (Box box : solids) {
            double share = kg * box.volumeM3() / volume;
            sum.add(share, box.centre(), cuboid(share, box));
        }
        return sum.aboutCentre();
    }

    /** A mass spread evenly over the space between two cuboids, about the centroid of that space. */
    static Inertia ofShell(double kg, Box outside, Box inside) {
        double volume = outside.volumeM3() - inside.volumeM3();
        if (!(volume > 0)) {
            return cuboid(kg, outside);
        }
        double full = kg * outside.volumeM3() / volume;
        InertiaSum sum = new InertiaSum();
        sum.add(full, outside.centre(), cuboid(full, outside));
        sum.add(kg - full, inside.centre(), cuboid(kg - full, inside));
        return sum.aboutCentre();
    }

    private static Inertia cuboid(double kg, Box box) {
        return Inertia.ofCuboid(
                kg,
                Lengths.metres(box.x1() - box.x0()),
                Lengths.metres(box.y1() - box.y0()),
                Lengths.metres(box.z1() - box.z0()));
    }
}
