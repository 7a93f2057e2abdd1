package org.shelterwright.catalog.sliding;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;

/**
 * The free space of something made of cuboids that slides along the axes, without turning, past obstacles. Asked many
 * times, with this or that taken away.
 *
 * <p>Method: each part and each obstacle give an open cuboid of forbidden shifts (a Minkowski sum); what is left of the
 * domain is closed, so its connected parts are found exactly on the coordinates of those cuboids: no raster, no tolerance.
 * Rows of free intervals along x are made only where the search comes. A first search on few levels answers most of the
 * easy cases; its yes is sound.
 *
 * <p>Cost: at most one row for each two levels, of which there are as many as upper ends of forbidden cuboids on y and z.
 * Immutable; safe for several threads.
 */
public final class SlideSpace {
    static final int COARSE_YS = 24;
    static final int COARSE_ZS = 16;

    private final Box domain;
    private final List<Obstacle> forbidden;

    /**
     * Prepares the free space.
     *
     * @param parts the cuboids that move together, at shift zero
     * @param obstacles what is in the way
     * @param domain the shifts that are looked at; it must reach far enough for the ways that matter
     */
    public SlideSpace(List<Box> parts, List<Obstacle> obstacles, Box domain) {
        this.domain = domain;
        this.forbidden = obstacles.stream()
                .flatMap(obstacle -> parts.stream()
                        .map(part -> new Obstacle(obstacle.box().forbiddenShifts(part), obstacle.owner())))
                .sorted(Comparator.comparingInt(one -> one.box().x0()))
                .toList();
    }

    /** Whether the thing overlaps nothing at a shift, with some owners taken away. */
    public boolean free(Point shift, BitSet gone) {
        return domain.contains(shift) && blocking(shift, gone).isEmpty();
    }

    /** Owners of what the thing overlaps at a shift; -1 stands for fixed obstacles. */
    public List<Integer> blocking(Point shift, BitSet gone) {
        return forbidden.stream()
                .filter(one -> there(one, gone) && strictlyInside(one.box(), shift))
                .map(Obstacle::owner)
                .distinct()
                .sorted()
                .toList();
    }

    /**
     * Asks whether the thing can slide from a shift to any shift of the goal.
     *
     * @param start a free shift in the domain
     * @param goal closed cuboid of shifts, such as "all of it outside"
     * @param gone owners that are taken away
     * @throws IllegalArgumentException if the start is outside the domain or overlaps something
     */
    public Slide slide(Point start, Box goal, BitSet gone) {
        if (!free(start, gone)) {
            throw new IllegalArgumentException("Nothing can be slid from " + start
                    + ": it lies outside the domain, or something is in the way there already.");
        }
        Search coarse = search(start, goal, gone, COARSE_YS, COARSE_ZS);
        if (!coarse.path().isEmpty()) {
            return new Slide(true, coarse.path(), new BitSet());
        }
        Search exact = search(start, goal, gone, Integer.MAX_VALUE, Integer.MAX_VALUE);
        if (!exact.path().isEmpty()) {
            return new Slide(true, exact.path(), new BitSet());
        }
        return new Slide(false, List.of(), owners(exact.flood().frontier(0)));
    }

    /** The owners of obstacles, given by their numbers among what is forbidden; what is always there has none. */
    BitSet owners(BitSet obstacles) {
        BitSet owners = new BitSet();
        obstacles.stream()
                .map(obstacle -> forbidden.get(obstacle).owner())
                .filter(owner -> owner >= 0)
                .forEach(owners::set);
        return owners;
    }

    private record Search(Flood flood, List<Point> path) {}

    private Search search(Point start, Box goal, BitSet gone, int mostYs, int mostZs) {
        Levels ys = new Levels(
                ends(Box::y0), ends(Box::y1), domain.y0(), domain.y1(), new int[] {start.y(), goal.y0()}, mostYs);
        Levels zs = new Levels(
                ends(Box::z0), ends(Box::z1), domain.z0(), domain.z1(), new int[] {start.z(), goal.z0()}, mostZs);
        Rows rows = new Rows(ys, zs, ends(Box::x0), ends(Box::x1), alive(gone), domain.x0(), domain.x1());
        Flood flood = new Flood(ys, zs, new Flood.Layer(rows, goal));
        List<Stage> way = Straightening.merged(flood.run(List.of(start)));
        return new Search(flood, way.stream().map(Stage::shift).toList());
    }

    Box domain() {
        return domain;
    }

    /** The open cuboids of forbidden shifts, by their low end on x. */
    List<Obstacle> forbidden() {
        return forbidden;
    }

    int[] ends(ToIntFunction<Box> end) {
        return forbidden.stream().map(Obstacle::box).mapToInt(end).toArray();
    }

    long[] alive(BitSet gone) {
        long[] alive = new long[(forbidden.size() + 63) >>> 6];
        IntStream.range(0, forbidden.size())
                .filter(i -> there(forbidden.get(i), gone))
                .forEach(i -> alive[i >>> 6] |= 1L << i);
        return alive;
    }

    private static boolean there(Obstacle obstacle, BitSet gone) {
        return obstacle.owner() == Obstacle.FIXED || !gone.get(obstacle.owner());
    }

    private static boolean strictlyInside(Box box, Point p) {
        return box.x0() < p.x()
                && p.x() < box.x1()
                && box.y0() < p.y()
                && p.y() < box.y1()
                && box.z0() < p.z()
                && p.z() < box.z1();
    }
}
