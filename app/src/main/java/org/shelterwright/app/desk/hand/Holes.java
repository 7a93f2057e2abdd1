package org.shelterwright.app.desk.hand;

import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.body.HardPoint;
import org.shelterwright.catalog.body.HoleGrid;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.fit.PlacedFixing;
import org.shelterwright.solver.fit.places.FixingLattice;

/** Where a unit lands with all its fixings, near a place. Exact: the same lattice as the search uses. */
final class Holes {
    private final List<HardPoint> hardPoints;
    private final List<PlacedFixing> fixings;

    Holes(Moving moving) {
        hardPoints = moving.scene().body().hardPoints();
        Point low = moving.leader().pose(moving.situation()).at();
        fixings = PlacedFixing.of(moving.leader(), moving.situation()).stream()
                .filter(fixing -> !fixing.intoHost())
                .map(fixing ->
                        new PlacedFixing(fixing.fixing(), fixing.at().minus(low), fixing.face(), fixing.slot(), false))
                .toList();
    }

    /**
     * The nearest places of the low corner at which every fixing lands.
     *
     * @param wanted place of the low corner
     * @param window where to look, around it
     * @return a cuboid: one place where a hole decides, wider where a zone may be drilled anywhere; empty if the unit
     *     has no fixings or they land nowhere within the window. Cost: holes within the window times fixings
     */
    Optional<Box> nearest(Point wanted, Box window) {
        Box best = null;
        if (!fixings.isEmpty()) {
            for (Box region : FixingLattice.narrow(window, fixings, hardPoints)) {
                if (best == null || way(region, wanted) < way(best, wanted)) {
                    best = region;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** What takes the first fixing of the unit with its low corner at a place. */
    Optional<Catch> caught(Point at) {
        PlacedFixing first = fixings.get(0);
        Point place = first.at().plus(at);
        return hardPoints.stream()
                .filter(hardPoint ->
                        hardPoint.takes(place, first.face(), first.fixing().thread()))
                .findFirst()
                .map(hardPoint -> new Catch(Catch.Kind.HOLE, place, words(hardPoint, place), List.of()));
    }

    static String words(HardPoint hardPoint, Point place) {
        if (!(hardPoint instanceof HoleGrid grid)) {
            return hardPoint.name();
        }
        int hole = number(place, grid, grid.along(), grid.pitch());
        int row = number(place, grid, grid.across(), grid.rowPitch());
        return grid.name() + (grid.rows() > 1 ? ", row " + row : "") + ", hole " + hole;
    }

    static long way(Box region, Point wanted) {
        long way = 0;
        for (Axis axis : Axis.values()) {
            way += Math.abs(clamped(region, axis, wanted.along(axis)) - wanted.along(axis));
        }
        return way;
    }

    static int clamped(Box region, Axis axis, int value) {
        return Math.max(region.low(axis), Math.min(region.high(axis), value));
    }

    private static int number(Point place, HoleGrid grid, Axis axis, int pitch) {
        return (place.along(axis) - grid.first().along(axis)) / pitch + 1;
    }
}
