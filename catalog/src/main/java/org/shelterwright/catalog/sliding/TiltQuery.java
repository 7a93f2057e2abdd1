package org.shelterwright.catalog.sliding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

/**
 * Whether, and how, a thing gets from where it stands upright into a target by being tilted over once: it slides upright, is tilted
 * on one side, and slides lying. Backwards it is how it comes in.
 *
 * <p>Sliding is exact. A tilt is taken to need the cover of its arc (see {@code Tilted.sweep}): a yes is true, a no may be too strict
 * by what the cover is too high. All places for a tilt that are reached upright are looked at: room for the tilt lies in the free
 * space of the thing upright and lying, so each of its connected parts joins one part of either; and each has a point on the
 * levels that are looked at. What is taken away never makes a yes a no. Safe for several threads.
 */
public final class TiltQuery implements Moving {
    private final List<Box> upright;
    private final List<Box> lying;
    private final List<Box> sweep;
    private final Box target;
    private final @Nullable SlideSpace standing;
    private final @Nullable SlideSpace laid;
    private final @Nullable SlideSpace room;

    /**
     * Prepares the question.
     *
     * @param thing the cuboids that move together, where they are now
     * @param side the upright side, in the frame of the cuboids, that it is laid on
     * @param region the cuboid that it stays in; must hold it where it is now
     * @param target the cuboid that it must lie in at the end
     * @throws IllegalArgumentException if the side is its top or bottom
     */
    public TiltQuery(List<Box> thing, Face side, List<Obstacle> obstacles, Box region, Box target) {
        if (side.axis() == Axis.Z) {
            throw new IllegalArgumentException("A thing is tilted over on one of its upright sides.");
        }
        this.upright = List.copyOf(thing);
        this.lying = Tilted.by(upright, side);
        this.sweep = Tilted.sweep(upright, side);
        this.target = target;
        this.standing = WayQuery.space(upright, obstacles, region).orElse(null);
        this.laid = WayQuery.space(lying, obstacles, region).orElse(null);
        this.room = WayQuery.space(sweep, obstacles, region).orElse(null);
    }

    @Override
    public List<Integer> overlapped(BitSet gone) {
        return standing == null ? List.of(Obstacle.FIXED) : standing.blocking(Point.ORIGIN, gone);
    }

    @Override
    public List<Box> at(Stage stage) {
        return (stage.lying() ? lying : upright)
                .stream().map(part -> part.moved(stage.shift())).toList();
    }

    @Override
    public List<Box> swept(Stage from, Stage to) {
        if (from.lying() != to.lying()) {
            return sweep.stream().map(box -> box.moved(from.shift())).toList();
        }
        Point way = to.shift().minus(from.shift());
        Axis axis = way.x() != 0 ? Axis.X : way.y() != 0 ? Axis.Y : Axis.Z;
        return at(from).stream().map(part -> part.swept(axis, way.along(axis))).toList();
    }

    @Override
    public Way ask(BitSet gone) {
        SlideSpace first = standing;
        if (first == null || !first.free(Point.ORIGIN, gone)) {
            throw new IllegalArgumentException("The thing overlaps something where it is now.");
        }
        SlideSpace second = laid;
        SlideSpace between = room;
        Optional<Box> goal = WayQuery.shifts(lying, target);
        if (second == null || between == null || goal.isEmpty()) {
            return Way.stuck(new BitSet());
        }
        int[] ys = levels(true, first, second, between, goal.get());
        int[] zs = levels(false, first, second, between, goal.get());
        Flood reached = flood(first, ys, zs, gone, null);
        reached.run(List.of(Point.ORIGIN));
        Rows rooms = WayQuery.rows(between, ys, zs, gone);
        List<Point> tilts = reached.within(rooms);
        Flood out = flood(second, ys, zs, gone, goal.get());
        List<Point> path =
                Straightening.merged(out.run(tilts)).stream().map(Stage::shift).toList();
        if (!path.isEmpty()) {
            return new Way(true, stages(first, second, path, gone), new BitSet());
        }
        BitSet frontier = first.owners(reached.frontier(0));
        frontier.or(second.owners(out.frontier(0)));
        WayQuery.hinderingNear(between, reached.reached(), gone, frontier);
        return Way.stuck(frontier);
    }

    private static List<Stage> stages(SlideSpace first, SlideSpace second, List<Point> path, BitSet gone) {
        Point tilt = path.get(0);
        List<Stage> stages = new ArrayList<>();
        List<Stage> before = first.slide(Point.ORIGIN, Box.between(tilt, tilt), gone).path().stream()
                .map(shift -> new Stage(0, shift))
                .toList();
        stages.addAll(new Straightening(List.of(first)).of(before, gone));
        List<Stage> after = path.stream().map(shift -> new Stage(0, shift)).toList();
        for (Stage stage : new Straightening(List.of(second)).of(after, gone)) {
            stages.add(new Stage(0, stage.shift(), true));
        }
        return stages;
    }

    private static Flood flood(SlideSpace space, int[] ys, int[] zs, BitSet gone, @Nullable Box goal) {
        return new Flood(
                WayQuery.levels(space, true, ys),
                WayQuery.levels(space, false, zs),
                new Flood.Layer(WayQuery.rows(space, ys, zs, gone), goal));
    }

    /** All levels of the three spaces, the place where the thing is, and the goal. */
    private static int[] levels(boolean onY, SlideSpace first, SlideSpace second, SlideSpace between, Box goal) {
        IntStream all = IntStream.of(0, onY ? goal.y0() : goal.z0());
        for (SlideSpace space : List.of(first, second, between)) {
            Box domain = space.domain();
            int low = onY ? domain.y0() : domain.z0();
            int high = onY ? domain.y1() : domain.z1();
            int[] ends = onY ? space.ends(Box::y1) : space.ends(Box::z1);
            all = IntStream.concat(all, IntStream.of(low));
            all = IntStream.concat(all, Arrays.stream(ends).filter(end -> end >= low && end <= high));
        }
        return all.sorted().distinct().toArray();
    }
}
