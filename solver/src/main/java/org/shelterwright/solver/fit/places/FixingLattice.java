package org.shelterwright.solver.fit.places;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.shelterwright.catalog.body.DrillZone;
import org.shelterwright.catalog.body.HardPoint;
import org.shelterwright.catalog.body.HoleGrid;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.fit.PlacedFixing;

/**
 * Finds where an item may stand so that every one of its fixings lands on a hard point: the hole lattice, shifted back by
 * each fixing and intersected over all of them. Exact, so a unit on one of these anchors needs no further test of its
 * fixings.
 */
public final class FixingLattice {
    private FixingLattice() {}

    /**
     * Narrows a region of anchors to those where all fixings land.
     *
     * @param fixings those of the unit standing with its low corner at the origin
     * @param domain anchors to begin with, a cuboid that may be flat on any axis (µm, frame of the body)
     * @return cuboids, flat on all axes where a hole decides. Cost: holes times fixings
     */
    public static List<Box> narrow(Box domain, List<PlacedFixing> fixings, List<HardPoint> hardPoints) {
        List<Box> regions = List.of(domain);
        for (PlacedFixing fixing : fixings) {
            if (fixing.intoHost()) {
                continue;
            }
            Set<Box> kept = new LinkedHashSet<>();
            for (HardPoint hardPoint : hardPoints) {
                if (hardPoint.surface() == fixing.face()
                        && (hardPoint.threads().isEmpty()
                                || hardPoint.threads().contains(fixing.fixing().thread()))) {
                    for (Box region : regions) {
                        landings(region, fixing.at(), hardPoint, kept);
                    }
                }
            }
            regions = List.copyOf(kept);
        }
        return regions;
    }

    private static void landings(Box region, Point at, HardPoint hardPoint, Set<Box> kept) {
        Box reached = region.moved(at);
        if (!meets(reached, hardPoint.outline())) {
            return;
        }
        if (hardPoint instanceof DrillZone zone) {
            kept.add(reached.intersection(zone.area()).moved(-at.x(), -at.y(), -at.z()));
        } else if (hardPoint instanceof HoleGrid grid) {
            for (Point hole : holes(grid, reached)) {
                Box one = Box.between(hole, hole).moved(-at.x(), -at.y(), -at.z());
                kept.add(one);
            }
        }
    }

    private static List<Point> holes(HoleGrid grid, Box within) {
        List<Point> holes = new ArrayList<>();
        Axis along = grid.along();
        Axis across = grid.across();
        int lowIndex = first(within.low(along) - grid.first().along(along), grid.pitch());
        int highIndex = last(within.high(along) - grid.first().along(along), grid.pitch(), grid.count());
        int lowRow = first(within.low(across) - grid.first().along(across), grid.rowPitch());
        int highRow = last(within.high(across) - grid.first().along(across), grid.rowPitch(), grid.rows());
        for (int row = lowRow; row <= highRow; row++) {
            for (int index = lowIndex; index <= highIndex; index++) {
                holes.add(grid.hole(index, row));
            }
        }
        return holes;
    }

    private static int first(int offset, int pitch) {
        return Math.max(0, Math.floorDiv(offset + pitch - 1, pitch));
    }

    private static int last(int offset, int pitch, int count) {
        return Math.min(count - 1, Math.floorDiv(offset, pitch));
    }

    private static boolean meets(Box a, Box b) {
        return a.x0() <= b.x1()
                && b.x0() <= a.x1()
                && a.y0() <= b.y1()
                && b.y0() <= a.y1()
                && a.z0() <= b.z1()
                && b.z0() <= a.z1();
    }
}
