package org.shelterwright.layouts.ledger.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.DrillZone;
import org.shelterwright.catalog.body.HardPoint;
import org.shelterwright.catalog.body.HoleGrid;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;

/** Where fixings land among the hard points of a body, and which shift would make them land. */
public final class Landing {
    /** How far from a fixing holes are looked for (µm); further away a shift is a new place, not a mend. */
    private static final int SEARCH = 500 * Lengths.MM;

    private final List<HardPoint> hardPoints;

    public Landing(List<HardPoint> hardPoints) {
        this.hardPoints = hardPoints;
    }

    /** The hard point that a fixing lands on, exactly; {@code null} if none. */
    public @Nullable HardPoint under(PlacedFixing fixing) {
        return under(fixing, Point.ORIGIN);
    }

    private @Nullable HardPoint under(PlacedFixing fixing, Point shift) {
        for (HardPoint hardPoint : hardPoints) {
            if (hardPoint.takes(
                    fixing.at().plus(shift), fixing.face(), fixing.fixing().thread())) {
                return hardPoint;
            }
        }
        return null;
    }

    /** The least shift that makes all the given fixings land at once; empty if there is none near. */
    Optional<Point> shiftForAll(List<PlacedFixing> fixings) {
        Point best = null;
        for (Point shift : shifts(fixings.get(0))) {
            if ((best == null || way(shift) < way(best))
                    && fixings.stream().allMatch(fixing -> under(fixing, shift) != null)) {
                best = shift;
            }
        }
        return Optional.ofNullable(best);
    }

    /** The shift of one fixing to the nearest place that takes it; empty if there is none near. */
    public Optional<Point> nearest(PlacedFixing fixing) {
        return shifts(fixing).stream().min((a, b) -> Long.compare(way(a), way(b)));
    }

    private List<Point> shifts(PlacedFixing fixing) {
        List<Point> shifts = new ArrayList<>();
        for (HardPoint hardPoint : hardPoints) {
            boolean fits = hardPoint.threads().isEmpty()
                    || hardPoint.threads().contains(fixing.fixing().thread());
            if (fits && hardPoint.surface() == fixing.face()) {
                if (hardPoint instanceof HoleGrid grid) {
                    addHoles(grid, fixing.at(), shifts);
                } else if (hardPoint instanceof DrillZone zone) {
                    add(clamped(zone.area(), fixing.at()), fixing.at(), shifts);
                }
            }
        }
        return shifts;
    }

    private static void addHoles(HoleGrid grid, Point at, List<Point> shifts) {
        int first = at.along(grid.along()) - grid.first().along(grid.along());
        int across = at.along(grid.across()) - grid.first().along(grid.across());
        int lastHole = Math.min(grid.count() - 1, Math.floorDiv(first + SEARCH, grid.pitch()));
        int lastRow = Math.min(grid.rows() - 1, Math.floorDiv(across + SEARCH, grid.rowPitch()));
        for (int i = Math.max(0, Math.floorDiv(first - SEARCH, grid.pitch())); i <= lastHole; i++) {
            for (int row = Math.max(0, Math.floorDiv(across - SEARCH, grid.rowPitch())); row <= lastRow; row++) {
                add(grid.hole(i, row), at, shifts);
            }
        }
    }

    private static void add(Point place, Point at, List<Point> shifts) {
        shifts.add(place.minus(at));
    }

    private static Point clamped(Box area, Point at) {
        Point inside = at;
        for (Axis axis : Axis.values()) {
            inside = inside.with(axis, Math.max(area.low(axis), Math.min(area.high(axis), at.along(axis))));
        }
        return inside;
    }

    private static long way(Point shift) {
        return (long) Math.abs(shift.x()) + Math.abs(shift.y()) + Math.abs(shift.z());
    }

    /** The axis along a hard point: that of its holes, or the longest of a zone. */
    public static Axis lengthwise(HardPoint hardPoint) {
        if (hardPoint instanceof HoleGrid grid) {
            return grid.along();
        }
        Box area = hardPoint.outline();
        Axis longest = Axis.X;
        for (Axis axis : Axis.values()) {
            longest = area.extent(axis) > area.extent(longest) ? axis : longest;
        }
        return longest;
    }
}
