package org.shelterwright.solver.inside.pack;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.layout.Posture;

/**
 * Packs parcels where hardly anything may be wasted, by going back: the lowest, then rearmost, then rightmost corner that is still open
 * takes, one after the other, every parcel in every posture, those first that touch most. A branch ends when more than what is to spare
 * is wasted beside a parcel: along a line from its face to the wall lie whole sides of parcels that are still to come, so what no sum of
 * them fills stays empty. Where much is to spare, a corner may stay open. The number of branches is bounded.
 */
final class CornerSearch {
    /** Those still to come are bits of an int, and of more than so many the bound on branches leaves nearly all untried. */
    private static final int MOST_PARCELS = 20;

    /** Each corner that may stay open multiplies the branches. */
    private static final int MOST_OPEN_CORNERS = 2;

    /** Share of the place from which on no waste is looked for: sums of sides then fill nearly every gap. */
    private static final double ROOMY = 0.04;

    /** Share of the place beyond which trying orders does as well, and sooner. */
    private static final double MOST_SPARE = 0.15;

    private record Branch(int parcel, Packed packed, double touching) {}

    private final PlacePacker packer;
    private final Box inside;
    private final List<Parcel> parcels;
    private final int grip;
    private final double spareM3;
    private final boolean tight;
    private final Map<Integer, BigInteger> sums = new HashMap<>();
    private final List<Point> leftOpen = new ArrayList<>();
    private long branches;

    /**
     * @param packer into which all goes
     * @param spareM3 volume of the place beyond that of the parcels and of what is in it (m³)
     */
    private CornerSearch(PlacePacker packer, Box inside, List<Parcel> parcels, double spareM3, long branches) {
        this.packer = packer;
        this.inside = inside;
        this.parcels = parcels;
        this.grip = parcels.stream().mapToInt(Parcel::grip).max().orElse(0);
        this.spareM3 = spareM3;
        this.tight = grip == 0 && spareM3 < ROOMY * inside.volumeM3();
        this.branches = branches;
    }

    /** Packs all parcels; gives whether it did. If not, the packer is as it was. */
    static boolean all(PlacePacker packer, Box inside, List<Parcel> parcels, long branches) {
        double volume = parcels.stream().mapToDouble(Parcel::volume).sum()
                + packer.packed().stream()
                        .mapToDouble(one -> one.box().volumeM3())
                        .sum();
        double spare = inside.volumeM3() - volume;
        if (parcels.size() > MOST_PARCELS || spare < -PlacePacker.SAME_M3 || spare > MOST_SPARE * inside.volumeM3()) {
            return false;
        }
        return new CornerSearch(packer, inside, parcels, spare, branches).go((1 << parcels.size()) - 1);
    }

    /** @param open the parcels that are still to come, a bit each */
    private boolean go(int open) {
        if (open == 0) {
            return true;
        }
        Point corner = corner();
        if (corner == null) {
            return false;
        }
        for (Branch branch : branches(open, corner)) {
            int rest = open & ~(1 << branch.parcel());
            if (branches-- <= 0) {
                return false;
            }
            if (!tight || !wastes(branch.packed().box(), rest)) {
                packer.keep(branch.packed());
                if (go(rest)) {
                    return true;
                }
                packer.removeLast();
            }
        }
        if (tight || leftOpen.size() >= MOST_OPEN_CORNERS) {
            return false;
        }
        leftOpen.add(corner);
        boolean found = go(open);
        leftOpen.remove(leftOpen.size() - 1);
        return found;
    }

    /** The first corner that nothing covers and that is not left open; {@code null} if there is none. */
    private @Nullable Point corner() {
        int[] zs = lows(Axis.Z);
        int[] xs = lows(Axis.X);
        int[] ys = lows(Axis.Y);
        for (int z : zs) {
            for (int x : xs) {
                for (int y : ys) {
                    Point at = new Point(x, y, z);
                    if (!leftOpen.contains(at) && packer.packed().stream().noneMatch(one -> covers(one, at))) {
                        return at;
                    }
                }
            }
        }
        return null;
    }

    private boolean covers(Packed one, Point at) {
        for (Axis axis : Axis.values()) {
            int room = packer.fingers(axis, grip);
            if (at.along(axis) < one.box().low(axis) - room
                    || at.along(axis) >= one.box().high(axis) + room) {
                return false;
            }
        }
        return true;
    }

    private int[] lows(Axis axis) {
        int room = packer.fingers(axis, grip);
        TreeSet<Integer> lows = new TreeSet<>();
        lows.add(inside.low(axis) + room);
        packer.packed().forEach(one -> lows.add(one.box().high(axis) + room));
        lows.removeIf(low -> low >= inside.high(axis));
        return lows.stream().mapToInt(Integer::intValue).toArray();
    }

    private List<Branch> branches(int open, Point corner) {
        List<Branch> branches = new ArrayList<>();
        for (int p = 0; p < parcels.size(); p++) {
            Parcel parcel = parcels.get(p);
            if ((open >> p & 1) == 0 || twinBefore(open, p)) {
                continue;
            }
            for (Posture posture : parcel.postures()) {
                Size size = posture.apply(parcel.size());
                Point high = corner.plus(new Point(size.x(), size.y(), size.z()));
                Box box = Box.of(corner, size);
                if (within(high) && packer.fits(parcel, box)) {
                    branches.add(new Branch(p, new Packed(parcel, posture, box), packer.touching(box)));
                }
            }
        }
        branches.sort(Comparator.comparingDouble((Branch one) -> -one.touching())
                .thenComparingDouble(one -> -one.packed().parcel().volume())
                .thenComparingInt(Branch::parcel));
        return branches;
    }

    /** Whether the same parcel but for its name comes before and is open too. */
    private boolean twinBefore(int open, int p) {
        for (int q = 0; q < p; q++) {
            Parcel other = parcels.get(q);
            if ((open >> q & 1) == 1
                    && other.size().equals(parcels.get(p).size())
                    && other.atLeast(parcels.get(p))
                    && parcels.get(p).atLeast(other)) {
                return true;
            }
        }
        return false;
    }

    private boolean within(Point high) {
        for (Axis axis : Axis.values()) {
            if (high.along(axis) > inside.high(axis) - packer.fingers(axis, grip)) {
                return false;
            }
        }
        return true;
    }

    /** Whether beside a parcel, up to the wall, more stays empty than is to spare. */
    private boolean wastes(Box box, int rest) {
        for (Axis axis : Axis.values()) {
            int gap = inside.high(axis) - box.high(axis);
            Box shadow =
                    Box.between(box.low().with(axis, box.high(axis)), box.high().with(axis, inside.high(axis)));
            boolean free = packer.packed().stream().noneMatch(one -> one.box().overlaps(shadow));
            if (gap > 0 && free) {
                BigInteger reached = sums.computeIfAbsent(rest, this::sums);
                BigInteger upTo = reached.and(BigInteger.ONE.shiftLeft(gap + 1).subtract(BigInteger.ONE));
                int empty = gap - (upTo.bitLength() - 1);
                if (box.volumeM3() * empty / box.extent(axis) > spareM3 + PlacePacker.SAME_M3) {
                    return true;
                }
            }
        }
        return false;
    }

    /** A bit for each length that sides of different parcels add up to (µm). */
    private BigInteger sums(int rest) {
        int most = 0;
        for (Axis axis : Axis.values()) {
            most = Math.max(most, inside.extent(axis));
        }
        BigInteger mask = BigInteger.ONE.shiftLeft(most + 1).subtract(BigInteger.ONE);
        BigInteger reached = BigInteger.ONE;
        for (int p = 0; p < parcels.size(); p++) {
            if ((rest >> p & 1) == 1) {
                Size size = parcels.get(p).size();
                BigInteger before = reached;
                for (int side : List.of(size.x(), size.y(), size.z())) {
                    reached = reached.or(before.shiftLeft(side));
                }
                reached = reached.and(mask);
            }
        }
        return reached;
    }
}
