package org.shelterwright.catalog.sliding;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;

/**
 * Whether, and how, a thing of cuboids gets from where it is into a target, sliding along the axes and, if it may, turning by
 * quarters. Asked many times, with this or that taken away.
 *
 * <p>Sliding is answered exactly ({@link SlideSpace}). Turning is looked at only if sliding does not do. A turn is taken to
 * need the whole disc about the middle of the thing, rounded outward (see {@code Turned.sweep}), and is looked for on some of
 * the levels only: a yes is true, a no may be too strict where a thing could be wriggled round.
 *
 * <p>What is taken away never makes a yes a no: each answer is a conjunction over obstacles. Safe for several threads.
 */
public final class WayQuery implements Moving {
    private static final int TURN_YS = 16;
    private static final int TURN_ZS = 6;

    private final List<Obstacle> obstacles;
    private final Box region;
    private final Box target;
    private final boolean mayTurn;
    private final Point pivot;
    private final List<List<Box>> parts = new ArrayList<>();
    private final @Nullable SlideSpace own;
    private volatile @Nullable Turning turning;

    /**
     * What turning needs beside the thing as it is: made only if sliding does not do.
     *
     * @param layers free space by quarters; {@code null} where the turned thing has no room at all
     * @param room where there is room for a turn; {@code null} if nowhere
     */
    private record Turning(
            List<@Nullable SlideSpace> layers, @Nullable SlideSpace room) {}

    /**
     * Prepares the question.
     *
     * @param thing the cuboids that move together, where they are now
     * @param obstacles what is in the way
     * @param region the cuboid that it stays in; must hold it where it is now
     * @param target the cuboid that it must lie in at the end
     * @param mayTurn whether turning is looked at
     */
    public WayQuery(List<Box> thing, List<Obstacle> obstacles, Box region, Box target, boolean mayTurn) {
        this.obstacles = List.copyOf(obstacles);
        this.region = region;
        this.target = target;
        this.mayTurn = mayTurn;
        this.pivot = Turned.pivot(thing);
        for (int quarters = 0; quarters < 4; quarters++) {
            parts.add(Turned.by(thing, quarters, pivot));
        }
        own = space(parts.get(0), obstacles, region).orElse(null);
    }

    private Turning turning(SlideSpace first) {
        Turning made = turning;
        if (made == null) {
            List<@Nullable SlideSpace> layers = new ArrayList<>();
            layers.add(first);
            for (int quarters = 1; quarters < 4; quarters++) {
                layers.add(space(parts.get(quarters), obstacles, region).orElse(null));
            }
            made = new Turning(
                    layers,
                    space(Turned.sweep(parts.get(0), pivot), obstacles, region).orElse(null));
            turning = made;
        }
        return made;
    }

    static Optional<SlideSpace> space(List<Box> parts, List<Obstacle> obstacles, Box region) {
        return shifts(parts, region).map(domain -> new SlideSpace(parts, obstacles, domain));
    }

    /** The shifts at which all parts lie in a cuboid; empty if they are larger than it. */
    static Optional<Box> shifts(List<Box> parts, Box within) {
        Box hull = Turned.hull(parts);
        int x0 = within.x0() - hull.x0();
        int y0 = within.y0() - hull.y0();
        int z0 = within.z0() - hull.z0();
        int x1 = within.x1() - hull.x1();
        int y1 = within.y1() - hull.y1();
        int z1 = within.z1() - hull.z1();
        return x0 > x1 || y0 > y1 || z0 > z1 ? Optional.empty() : Optional.of(new Box(x0, y0, z0, x1, y1, z1));
    }

    @Override
    public List<Box> at(Stage stage) {
        return parts.get(stage.quarters()).stream()
                .map(part -> part.moved(stage.shift()))
                .toList();
    }

    @Override
    public List<Box> swept(Stage from, Stage to) {
        if (from.quarters() != to.quarters()) {
            return Turned.sweep(parts.get(0), pivot).stream()
                    .map(box -> box.moved(from.shift()))
                    .toList();
        }
        Point way = to.shift().minus(from.shift());
        Axis axis = way.x() != 0 ? Axis.X : way.y() != 0 ? Axis.Y : Axis.Z;
        return at(from).stream().map(part -> part.swept(axis, way.along(axis))).toList();
    }

    @Override
    public List<Integer> overlapped(BitSet gone) {
        return own == null ? List.of(Obstacle.FIXED) : own.blocking(Point.ORIGIN, gone);
    }

    @Override
    public Way ask(BitSet gone) {
        SlideSpace first = own;
        if (first == null) {
            throw new IllegalArgumentException("The thing lies outside the region that it is to stay in.");
        }
        if (!first.free(Point.ORIGIN, gone)) {
            throw new IllegalArgumentException("The thing overlaps something where it is now.");
        }
        Box goal = shifts(parts.get(0), target).orElse(null);
        Slide slide = goal == null ? null : first.slide(Point.ORIGIN, goal, gone);
        if (slide != null && slide.free()) {
            List<Stage> stages =
                    slide.path().stream().map(shift -> new Stage(0, shift)).toList();
            return way(stages, List.of(first), gone);
        }
        SlideSpace room = mayTurn ? turning(first).room() : null;
        if (room == null) {
            return slide == null ? Way.stuck(new BitSet()) : Way.stuck(slide.frontier());
        }
        List<@Nullable SlideSpace> layers = turning(first).layers();
        Flood flood = flood(layers, room, gone);
        List<Stage> stages = flood.run(List.of(Point.ORIGIN));
        if (!stages.isEmpty()) {
            return way(stages, layers, gone);
        }
        BitSet frontier = frontier(flood, layers, room, gone);
        if (slide != null) {
            frontier.or(slide.frontier());
        }
        return Way.stuck(frontier);
    }

    private static Way way(List<Stage> stages, List<@Nullable SlideSpace> layers, BitSet gone) {
        return new Way(true, new Straightening(layers).of(stages, gone), new BitSet());
    }

    private Flood flood(List<@Nullable SlideSpace> layers, SlideSpace room, BitSet gone) {
        int[] ys = shared(layers, room, true, TURN_YS);
        int[] zs = shared(layers, room, false, TURN_ZS);
        List<Flood.@Nullable Layer> flooded = new ArrayList<>();
        for (int quarters = 0; quarters < layers.size(); quarters++) {
            SlideSpace space = layers.get(quarters);
            Box goal = shifts(parts.get(quarters), target).orElse(null);
            flooded.add(space == null ? null : new Flood.Layer(rows(space, ys, zs, gone), goal));
        }
        return new Flood(levels(room, true, ys), levels(room, false, zs), flooded, rows(room, ys, zs, gone));
    }

    /** The levels of all spaces on an axis, and the places where the thing is and must come to. */
    private int[] shared(List<@Nullable SlideSpace> layers, SlideSpace room, boolean onY, int most) {
        IntStream.Builder all = IntStream.builder();
        all.add(0);
        addLevels(room, onY, most, all);
        for (int quarters = 0; quarters < layers.size(); quarters++) {
            SlideSpace space = layers.get(quarters);
            if (space != null) {
                addLevels(space, onY, most, all);
            }
            shifts(parts.get(quarters), target).ifPresent(goal -> all.add(onY ? goal.y0() : goal.z0()));
        }
        return all.build().sorted().distinct().toArray();
    }

    /** All levels of what is always there, such as a door, and some of those of the rest; they do not depend on what is gone. */
    private static void addLevels(SlideSpace space, boolean onY, int most, IntStream.Builder all) {
        Box domain = space.domain();
        int low = onY ? domain.y0() : domain.z0();
        int high = onY ? domain.y1() : domain.z1();
        int[] lows = onY ? space.ends(Box::y0) : space.ends(Box::z0);
        int[] highs = onY ? space.ends(Box::y1) : space.ends(Box::z1);
        Levels thinned = new Levels(lows, highs, low, high, new int[] {}, most);
        for (int i = 0; i < thinned.count(); i++) {
            all.add(thinned.level(i));
        }
        for (int i = 0; i < highs.length; i++) {
            if (space.forbidden().get(i).owner() == Obstacle.FIXED && highs[i] >= low && highs[i] <= high) {
                all.add(highs[i]);
            }
        }
    }

    static Levels levels(SlideSpace space, boolean onY, int[] at) {
        return Levels.at(
                onY ? space.ends(Box::y0) : space.ends(Box::z0), onY ? space.ends(Box::y1) : space.ends(Box::z1), at);
    }

    static Rows rows(SlideSpace space, int[] ys, int[] zs, BitSet gone) {
        return new Rows(
                levels(space, true, ys),
                levels(space, false, zs),
                space.ends(Box::x0),
                space.ends(Box::x1),
                space.alive(gone),
                space.domain());
    }

    private static BitSet frontier(Flood flood, List<@Nullable SlideSpace> layers, SlideSpace room, BitSet gone) {
        BitSet owners = new BitSet();
        for (int quarters = 0; quarters < layers.size(); quarters++) {
            SlideSpace space = layers.get(quarters);
            if (space != null) {
                owners.or(space.owners(flood.frontier(quarters)));
            }
        }
        hinderingNear(room, flood.reached(), gone, owners);
        return owners;
    }

    /** Adds whatever hinders a turn anywhere near what was reached: more than needed, never less. */
    static void hinderingNear(SlideSpace room, Box reached, BitSet gone, BitSet owners) {
        for (Obstacle obstacle : room.forbidden()) {
            if (obstacle.owner() >= 0 && !gone.get(obstacle.owner()) && touch(obstacle.box(), reached)) {
                owners.set(obstacle.owner());
            }
        }
    }

    private static boolean touch(Box a, Box b) {
        return a.x0() <= b.x1()
                && a.x1() >= b.x0()
                && a.y0() <= b.y1()
                && a.y1() >= b.y0()
                && a.z0() <= b.z1()
                && a.z1() >= b.z0();
    }
}
