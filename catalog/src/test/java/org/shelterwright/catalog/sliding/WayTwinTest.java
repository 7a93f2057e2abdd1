package org.shelterwright.catalog.sliding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;

/**
 * Holds ways with turns against a plain flood over a raster of half units in four turns. The twin turns a thing only where a
 * square that holds the disc of its turn is free, in small steps where the true corner paths are free: so it is never stricter
 * than the truth, and the search must never say yes where the twin says no.
 */
class WayTwinTest {
    private static final int ROOM = 9;
    private static final int UNIT = 1000;

    private record World(List<Box> parts, List<Obstacle> obstacles, Box region, Box target) {}

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void isNeverMoreGenerousThanTheTruth(long seed) {
        Random random = new Random(seed);
        int yes = 0;
        int byTurning = 0;
        int no = 0;
        while (yes + no < 250) {
            World world = world(random);
            WayQuery query = new WayQuery(world.parts(), world.obstacles(), world.region(), world.target(), true);
            if (!query.overlapped(new BitSet()).isEmpty()) {
                continue;
            }
            Way way = query.ask(new BitSet());
            WayQuery sliding = new WayQuery(world.parts(), world.obstacles(), world.region(), world.target(), false);
            boolean slides = sliding.ask(new BitSet()).free();

            assertThat(way.free() || !slides).as("turning only adds").isTrue();
            if (way.free()) {
                yes++;
                byTurning += slides ? 0 : 1;
                assertEveryMoveIsClear(seed, world, query, way);
            } else {
                no++;
                assertFrontierAloneHoldsIt(seed, world, query, way);
            }
            assertThat(slides).as("seed %d, %s", seed, world).isEqualTo(twinSlides(world));
        }
        assertThat(yes).isGreaterThan(50);
        assertThat(no).isGreaterThan(20);
        assertThat(byTurning).as("ways that need a turn").isGreaterThan(5);
    }

    private static World world(Random random) {
        int length = random.nextInt(1, 5);
        int width = random.nextInt(1, 3);
        int x = random.nextInt(1, ROOM - length);
        int y = random.nextInt(0, ROOM - width + 1);
        List<Box> parts = new ArrayList<>(List.of(box(x, y, 0, x + length, y + width, random.nextInt(1, 3))));
        if (random.nextInt(3) == 0) {
            parts.add(box(x, y, 0, x + 1, y + width, 3));
        }
        int doorY = random.nextInt(0, ROOM - 2);
        int doorWidth = random.nextInt(1, 4);
        List<Obstacle> obstacles = new ArrayList<>();
        for (Box wall : List.of(
                box(-1, -20, -20, 0, doorY, 20),
                box(-1, doorY + doorWidth, -20, 0, 30, 20),
                box(-1, doorY, 3, 0, doorY + doorWidth, 20),
                box(0, ROOM, -20, 20, 30, 20),
                box(0, -20, -20, 20, 0, 20),
                box(ROOM, -20, -20, 20, 30, 20))) {
            obstacles.add(new Obstacle(wall, Obstacle.FIXED));
        }
        int others = random.nextInt(4);
        for (int owner = 0; owner < others; owner++) {
            int ox = random.nextInt(ROOM);
            int oy = random.nextInt(ROOM);
            int oz = random.nextInt(2);
            obstacles.add(new Obstacle(
                    box(ox, oy, oz, ox + random.nextInt(1, 4), oy + random.nextInt(1, 4), oz + random.nextInt(1, 4)),
                    owner));
        }
        Box region = box(-8, -4, 0, ROOM, ROOM + 4, 5);
        return new World(parts, obstacles, region, box(-8, -4, 0, -1, ROOM + 4, 5));
    }

    private static Box box(int x0, int y0, int z0, int x1, int y1, int z1) {
        return new Box(x0 * UNIT, y0 * UNIT, z0 * UNIT, x1 * UNIT, y1 * UNIT, z1 * UNIT);
    }

    /** Floods all half-unit shifts without turning. */
    private static boolean twinSlides(World world) {
        Set<Point> seen = new HashSet<>();
        Deque<Point> open = new ArrayDeque<>(List.of(Point.ORIGIN));
        while (!open.isEmpty()) {
            Point at = open.remove();
            if (!seen.add(at) || !free(world, world.parts(), at)) {
                continue;
            }
            if (world.parts().stream().allMatch(part -> world.target().contains(part.moved(at)))) {
                return true;
            }
            for (Axis axis : Axis.values()) {
                open.add(at.with(axis, at.along(axis) + UNIT / 2));
                open.add(at.with(axis, at.along(axis) - UNIT / 2));
            }
        }
        return false;
    }

    private static boolean free(World world, List<Box> parts, Point at) {
        for (Box part : parts) {
            Box moved = part.moved(at);
            if (!world.region().contains(moved)
                    || world.obstacles().stream().anyMatch(one -> one.box().overlaps(moved))) {
                return false;
            }
        }
        return true;
    }

    private static void assertEveryMoveIsClear(long seed, World world, WayQuery query, Way way) {
        List<Stage> stages = way.stages();
        assertThat(stages.get(0)).isEqualTo(Stage.START);
        for (int i = 1; i < stages.size(); i++) {
            Stage from = stages.get(i - 1);
            Stage to = stages.get(i);
            if (from.quarters() != to.quarters()) {
                assertThat(from.shift()).isEqualTo(to.shift());
                assertTurnIsClear(seed, world, from);
                continue;
            }
            Point move = to.shift().minus(from.shift());
            Axis axis = move.x() != 0 ? Axis.X : move.y() != 0 ? Axis.Y : Axis.Z;
            assertThat(move.with(axis, 0)).as("one axis at a time").isEqualTo(Point.ORIGIN);
            for (Box part : query.at(from)) {
                Box swept = part.swept(axis, move.along(axis));
                assertThat(world.region().contains(swept)).isTrue();
                assertThat(world.obstacles())
                        .as("seed %d, %s, %s", seed, world, way)
                        .noneMatch(one -> one.box().overlaps(swept));
            }
        }
        List<Box> end = query.at(stages.get(stages.size() - 1));
        assertThat(end).allMatch(world.target()::contains);
    }

    /** Turns the thing in steps of one degree and looks whether a grid of its points gets into an obstacle. */
    private static void assertTurnIsClear(long seed, World world, Stage stage) {
        Box hull = world.parts().stream().reduce(Box::hull).orElseThrow();
        Point pivot = hull.centre().plus(stage.shift());
        for (Box part : world.parts()) {
            Box p = part.moved(stage.shift());
            for (int degree = 0; degree < 360; degree += 4) {
                double cos = Math.cos(Math.toRadians(degree));
                double sin = Math.sin(Math.toRadians(degree));
                for (int i = 0; i <= 4; i++) {
                    for (int j = 0; j <= 4; j++) {
                        double dx = p.x0() + (p.x1() - p.x0()) * i / 4.0 - pivot.x();
                        double dy = p.y0() + (p.y1() - p.y0()) * j / 4.0 - pivot.y();
                        double x = pivot.x() + dx * cos - dy * sin;
                        double y = pivot.y() + dx * sin + dy * cos;
                        assertThat(world.obstacles())
                                .as("seed %d, %s at %s, %d degrees", seed, world, stage, degree)
                                .noneMatch(one -> within(one.box(), x, y, p.z0(), p.z1()));
                    }
                }
            }
        }
    }

    private static boolean within(Box box, double x, double y, int z0, int z1) {
        double slack = 1e-6;
        return box.x0() + slack < x
                && x < box.x1() - slack
                && box.y0() + slack < y
                && y < box.y1() - slack
                && box.z0() < z1
                && z0 < box.z1();
    }

    private static void assertFrontierAloneHoldsIt(long seed, World world, WayQuery query, Way way) {
        BitSet gone = new BitSet();
        world.obstacles().stream()
                .mapToInt(Obstacle::owner)
                .filter(owner -> owner >= 0)
                .forEach(gone::set);
        gone.andNot(way.frontier());

        assertThat(query.ask(gone).free())
                .as("with nothing left but the frontier, seed %d, %s", seed, world)
                .isFalse();
    }
}
