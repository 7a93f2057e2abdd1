package org.shelterwright.solver.fit.places;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;

/**
 * A set of anchors in one plane: single points (from hole lattices) and rectangles (where any place will do). Anchors are
 * handed around as {@code int[3]} (x, y, z in µm). Immutable; safe for several threads.
 */
public final class AnchorSet {
    private final Axis u;
    private final Axis v;
    private final int[] rowV;
    private final int[][] rowU;
    private final int[] firstOfRow;
    private final Box[] areas;
    private final int fixed;
    private final Axis across;
    private final int pitchU;
    private final int pitchV;

    private AnchorSet(Axis across, int fixed, List<Box> regions) {
        this.across = across;
        this.fixed = fixed;
        this.u = across == Axis.X ? Axis.Y : Axis.X;
        this.v = across == Axis.Z ? Axis.Y : Axis.Z;
        TreeMap<Integer, List<Integer>> rows = new TreeMap<>();
        List<Box> wide = new ArrayList<>();
        for (Box region : regions) {
            if (region.extent(u) == 0 && region.extent(v) == 0) {
                rows.computeIfAbsent(region.low(v), key -> new ArrayList<>()).add(region.low(u));
            } else {
                wide.add(region);
            }
        }
        this.areas = wide.stream().distinct().toArray(Box[]::new);
        this.rowV = rows.keySet().stream().mapToInt(Integer::intValue).toArray();
        this.rowU = rows.values().stream()
                .map(row -> row.stream()
                        .mapToInt(Integer::intValue)
                        .sorted()
                        .distinct()
                        .toArray())
                .toArray(int[][]::new);
        this.firstOfRow = new int[rowU.length + 1];
        for (int i = 0; i < rowU.length; i++) {
            firstOfRow[i + 1] = firstOfRow[i] + rowU[i].length;
        }
        this.pitchU = pitch(leastOfRows());
        this.pitchV = pitch(leastStep(rowV, Integer.MAX_VALUE));
    }

    /**
     * Takes regions that all lie in one plane.
     *
     * @param across the axis square to the plane
     * @param regions cuboids, flat on that axis at the same place; flat on all axes: single anchors
     */
    public static AnchorSet of(Axis across, List<Box> regions) {
        List<Box> sorted = new ArrayList<>(regions);
        sorted.sort(Comparator.comparingInt(Box::x0).thenComparingInt(Box::y0).thenComparingInt(Box::z0));
        return new AnchorSet(across, sorted.isEmpty() ? 0 : sorted.get(0).low(across), sorted);
    }

    public boolean isEmpty() {
        return points() == 0 && areas.length == 0;
    }

    /** How many single anchors it has. */
    public int points() {
        return firstOfRow[rowU.length];
    }

    /** Whether any place in some rectangle will do. */
    public boolean hasAreas() {
        return areas.length > 0;
    }

    /** The axis square to its plane. */
    public Axis across() {
        return across;
    }

    /** Least distance of two neighbouring anchors on an axis (µm); zero where any place will do. */
    public int pitch(Axis axis) {
        return axis == across ? 0 : axis == u ? pitchU : pitchV;
    }

    private int leastOfRows() {
        int least = Integer.MAX_VALUE;
        for (int[] row : rowU) {
            least = leastStep(row, least);
        }
        return least;
    }

    private int pitch(int least) {
        return areas.length > 0 || least == Integer.MAX_VALUE ? 0 : least;
    }

    private static int leastStep(int[] sorted, int before) {
        int least = before;
        for (int i = 1; i < sorted.length; i++) {
            least = Math.min(least, sorted[i] - sorted[i - 1]);
        }
        return least;
    }

    /** Moves a place to the nearest anchor (least sum of the ways on both axes). Cost: few rows. */
    public void nearest(int[] place) {
        int pu = place[u.ordinal()];
        int pv = place[v.ordinal()];
        long best = Long.MAX_VALUE;
        int bestU = pu;
        int bestV = pv;
        for (Box area : areas) {
            int cu = Math.max(area.low(u), Math.min(area.high(u), pu));
            int cv = Math.max(area.low(v), Math.min(area.high(v), pv));
            long way = way(cu - pu, cv - pv);
            if (way < best) {
                best = way;
                bestU = cu;
                bestV = cv;
            }
        }
        int from = Arrays.binarySearch(rowV, pv);
        int up = from >= 0 ? from : -from - 1;
        int down = up - 1;
        while (true) {
            long wayUp = up < rowV.length ? (long) rowV[up] - pv : Long.MAX_VALUE;
            long wayDown = down >= 0 ? (long) pv - rowV[down] : Long.MAX_VALUE;
            int row = wayUp <= wayDown ? up++ : down--;
            if (Math.min(wayUp, wayDown) >= best) {
                break;
            }
            int cu = nearestIn(rowU[row], pu);
            long way = way(cu - pu, rowV[row] - pv);
            if (way < best) {
                best = way;
                bestU = cu;
                bestV = rowV[row];
            }
        }
        set(place, bestU, bestV);
    }

    /**
     * Moves a place to the anchor of a number.
     *
     * @param index from 0 to {@link #points()} - 1
     */
    public void point(int index, int[] place) {
        int row = Arrays.binarySearch(firstOfRow, index);
        row = row >= 0 ? row : -row - 2;
        while (rowU[row].length == 0) {
            row++;
        }
        set(place, rowU[row][index - firstOfRow[row]], rowV[row]);
    }

    /** The rectangles, flat on {@link #across()}. */
    public List<Box> areas() {
        return List.of(areas);
    }

    public boolean contains(int[] place) {
        if (place[across.ordinal()] != fixed) {
            return false;
        }
        int pu = place[u.ordinal()];
        int pv = place[v.ordinal()];
        int row = Arrays.binarySearch(rowV, pv);
        if (row >= 0 && Arrays.binarySearch(rowU[row], pu) >= 0) {
            return true;
        }
        for (Box area : areas) {
            if (area.low(u) <= pu && pu <= area.high(u) && area.low(v) <= pv && pv <= area.high(v)) {
                return true;
            }
        }
        return false;
    }

    private void set(int[] place, int pu, int pv) {
        place[u.ordinal()] = pu;
        place[v.ordinal()] = pv;
        place[across.ordinal()] = fixed;
    }

    private static long way(int du, int dv) {
        return (long) Math.abs(du) + Math.abs(dv);
    }

    private static int nearestIn(int[] sorted, int value) {
        int found = Arrays.binarySearch(sorted, value);
        if (found >= 0) {
            return value;
        }
        int above = -found - 1;
        if (above == 0) {
            return sorted[0];
        }
        if (above == sorted.length) {
            return sorted[above - 1];
        }
        return value - sorted[above - 1] <= sorted[above] - value ? sorted[above - 1] : sorted[above];
    }
}
