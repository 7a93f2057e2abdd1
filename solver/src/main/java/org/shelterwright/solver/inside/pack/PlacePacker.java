package org.shelterwright.solver.inside.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.layout.Posture;
import org.shelterwright.solver.fit.kernel.Dice;

/**
 * Packs parcels into one place, one after the other: each goes to the lowest, then rearmost, then rightmost corner at which it lies
 * inside, overlaps nothing, rests on enough of its base and on nothing fragile, and leaves room to grip. Corners are those that the
 * place and the parcels in it make. Not for several threads. Cost of one parcel: the square of those that are there.
 */
public final class PlacePacker {
    /** Of so many parcels all corners are tried. */
    private static final int FEW = 10;

    /** Sums of volumes that differ by less are the same (m³): a cube of a tenth of a millimetre. */
    static final double SAME_M3 = 1e-12;

    private final Box inside;
    private final Axis gripAxis;
    private final double restShare;
    private final List<Packed> packed = new ArrayList<>();

    /**
     * @param gripAxis the axis at whose sides fingers go
     * @param restShare least share of its base on which a parcel rests
     */
    public PlacePacker(Box inside, Axis gripAxis, double restShare) {
        this.inside = inside;
        this.gripAxis = gripAxis;
        this.restShare = restShare;
    }

    /** The axes at whose sides fingers may go, by the way out of the place. */
    public static List<Axis> gripAxes(Face way) {
        return way.axis() == Axis.X
                ? List.of(Axis.Y)
                : way.axis() == Axis.Y ? List.of(Axis.X) : List.of(Axis.Y, Axis.X);
    }

    public List<Packed> packed() {
        return List.copyOf(packed);
    }

    /** Puts a parcel where it must stay, without looking whether it fits. */
    public void keep(Packed one) {
        packed.add(one);
    }

    /** Takes out what went in last. */
    void removeLast() {
        packed.remove(packed.size() - 1);
    }

    /** Of the room that fingers take, what lies along an axis. */
    int fingers(Axis axis, int grip) {
        return axis == gripAxis ? grip : 0;
    }

    /** Packs a parcel; gives whether it found room. */
    public boolean add(Parcel parcel) {
        Packed best = null;
        for (Posture posture : parcel.postures()) {
            Packed found = lowest(parcel, posture, best);
            best = found == null ? best : found;
        }
        if (best != null) {
            packed.add(best);
        }
        return best != null;
    }

    /**
     * Packs that of some parcels which touches walls and others with most of its surface where it lies.
     *
     * @param dice makes near equals differ from one try to the next
     * @return the parcel that was packed; {@code null} if none finds room
     */
    @Nullable
    Parcel addTouching(List<Parcel> open, Dice dice) {
        Packed best = null;
        double most = -1;
        for (Parcel parcel : open) {
            for (Posture posture : parcel.postures()) {
                Size size = posture.apply(parcel.size());
                int[] xs = corners(Axis.X, size, parcel);
                int[] ys = corners(Axis.Y, size, parcel);
                for (int z : corners(Axis.Z, size, parcel)) {
                    for (int x : xs) {
                        for (int y : ys) {
                            Box box = new Box(x, y, z, x + size.x(), y + size.y(), z + size.z());
                            double touch = fits(parcel, box) ? touching(box) * (0.9 + 0.1 * dice.share()) : -1;
                            if (touch > most) {
                                most = touch;
                                best = new Packed(parcel, posture, box);
                            }
                        }
                    }
                }
            }
        }
        if (best == null) {
            return null;
        }
        packed.add(best);
        return best.parcel();
    }

    /** The share of the surface of a cuboid that lies on walls of the place or on faces of parcels. */
    double touching(Box box) {
        double touched = 0;
        double surface = 0;
        for (Axis axis : Axis.values()) {
            double face = box.volumeM3() / Lengths.metres(box.extent(axis));
            surface += 2 * face;
            touched += box.low(axis) == inside.low(axis) ? face : 0;
            touched += box.high(axis) == inside.high(axis) ? face : 0;
            for (Packed one : packed) {
                Box other = one.box();
                if (other.high(axis) == box.low(axis) || other.low(axis) == box.high(axis)) {
                    double area = 1;
                    for (Axis across : Axis.values()) {
                        if (across != axis) {
                            int shared = Math.min(box.high(across), other.high(across))
                                    - Math.max(box.low(across), other.low(across));
                            area *= Lengths.metres(Math.max(0, shared));
                        }
                    }
                    touched += area;
                }
            }
        }
        return touched / surface;
    }

    /** The lowest corner for a posture that comes before another. */
    private @Nullable Packed lowest(Parcel parcel, Posture posture, @Nullable Packed before) {
        Size size = posture.apply(parcel.size());
        for (Point at : points(size, parcel)) {
            if (before == null || earlier(at.x(), at.y(), at.z(), size, before.box())) {
                Box box = Box.of(at, size);
                if (fits(parcel, box)) {
                    return new Packed(parcel, posture, box);
                }
            }
        }
        return null;
    }

    /** Corners to try, lowest first: of few parcels all that their faces make, of many those at the edges of each. */
    private List<Point> points(Size size, Parcel parcel) {
        int[] zs = corners(Axis.Z, size, parcel);
        int[] xs = corners(Axis.X, size, parcel);
        int[] ys = corners(Axis.Y, size, parcel);
        List<Point> points = new ArrayList<>();
        if (packed.size() <= FEW) {
            for (int z : zs) {
                for (int x : xs) {
                    for (int y : ys) {
                        points.add(new Point(x, y, z));
                    }
                }
            }
            return points;
        }
        if (zs.length == 0 || xs.length == 0 || ys.length == 0) {
            return points;
        }
        int grip = parcel.grip();
        Point high = inside.high()
                .minus(new Point(size.x() + fingers(Axis.X, grip), size.y() + fingers(Axis.Y, grip), size.z()));
        Box room = Box.between(
                new Point(xs[0], ys[0], zs[0]),
                new Point(Math.max(xs[0], high.x()), Math.max(ys[0], high.y()), Math.max(zs[0], high.z())));
        for (Packed one : packed) {
            Box box = one.box();
            int gap = Math.max(one.parcel().grip(), parcel.grip());
            int x1 = box.x1() + fingers(Axis.X, gap);
            int y1 = box.y1() + fingers(Axis.Y, gap);
            for (int z : new int[] {zs[0], box.z0(), box.z1()}) {
                points.add(new Point(x1, box.y0(), z));
                points.add(new Point(x1, ys[0], z));
                points.add(new Point(box.x0(), y1, z));
                points.add(new Point(xs[0], y1, z));
            }
            points.add(new Point(box.x0(), box.y0(), box.z1()));
            points.add(new Point(xs[0], box.y0(), box.z1()));
            points.add(new Point(box.x0(), ys[0], box.z1()));
        }
        return points.stream()
                .filter(room::contains)
                .distinct()
                .sorted(Comparator.comparingInt(Point::z)
                        .thenComparingInt(Point::x)
                        .thenComparingInt(Point::y))
                .toList();
    }

    private static boolean earlier(int x, int y, int z, Size size, Box other) {
        if (z != other.z0()) {
            return z < other.z0();
        }
        if (x != other.x0()) {
            return x < other.x0();
        }
        return y != other.y0() ? y < other.y0() : z + size.z() < other.z1();
    }

    private int[] corners(Axis axis, Size size, Parcel parcel) {
        Set<Integer> found = new TreeSet<>();
        int room = fingers(axis, parcel.grip());
        int most = inside.high(axis) - size.along(axis) - room;
        int first = inside.low(axis) + room;
        if (first <= most) {
            found.add(first);
        }
        for (Packed one : packed) {
            int gap = fingers(axis, Math.max(one.parcel().grip(), parcel.grip()));
            int at = one.box().high(axis) + gap;
            boolean resting = axis != Axis.Z || !one.parcel().fragile();
            if (resting && at >= first && at <= most) {
                found.add(at);
            }
            if (gap > 0 && one.box().high(axis) >= first && one.box().high(axis) <= most) {
                found.add(one.box().high(axis));
            }
        }
        return found.stream().mapToInt(Integer::intValue).toArray();
    }

    boolean fits(Parcel parcel, Box box) {
        for (Packed one : packed) {
            if (box.overlaps(one.box())
                    || tooNear(parcel, box, one)
                    || one.parcel().fragile() && onTop(box, one.box())) {
                return false;
            }
            if (parcel.fragile() && onTop(one.box(), box)) {
                return false;
            }
        }
        return rests(box);
    }

    private static boolean onTop(Box upper, Box lower) {
        return upper.z0() == lower.z1()
                && upper.x0() < lower.x1()
                && lower.x0() < upper.x1()
                && upper.y0() < lower.y1()
                && lower.y0() < upper.y1();
    }

    /** Whether both face each other along the axis of fingers, with less room between than one of them needs. */
    private boolean tooNear(Parcel parcel, Box box, Packed other) {
        int need = Math.max(parcel.grip(), other.parcel().grip());
        if (need == 0) {
            return false;
        }
        for (Axis axis : Axis.values()) {
            if (axis != gripAxis
                    && (box.high(axis) <= other.box().low(axis) || other.box().high(axis) <= box.low(axis))) {
                return false;
            }
        }
        return box.gap(other.box(), gripAxis) < need;
    }

    private boolean rests(Box box) {
        if (box.z0() == inside.z0()) {
            return true;
        }
        double held = 0;
        for (Packed one : packed) {
            if (onTop(box, one.box())) {
                double x = Math.min(box.x1(), one.box().x1())
                        - (double) Math.max(box.x0(), one.box().x0());
                double y = Math.min(box.y1(), one.box().y1())
                        - (double) Math.max(box.y0(), one.box().y0());
                held += x * y;
            }
        }
        double base = (double) (box.x1() - box.x0()) * (box.y1() - box.y0());
        return held >= restShare * base;
    }
}
