package org.shelterwright.catalog.sliding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

/**
 * Holds ways with a tilt between two plain twins: every move of a yes is followed, the tilt in small angles, and must be clear; and
 * where a flood over a raster of half units, which tilts in one cuboid about the whole arc, finds a way, there must be a yes.
 */
class TiltTwinTest {
    private static final int ROOM = 9;
    private static final int UNIT = 1000;

    private record World(List<Box> parts, Face side, List<Obstacle> obstacles, Box region, Box target) {
        TiltQuery query() {
            return new TiltQuery(parts, side, obstacles, region, target);
        }
    }

    private record Spot(Point at, boolean lying) {}

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void liesBetweenTheTwins(long seed) {
        Random random = new Random(seed);
        int yes = 0;
        int no = 0;
        int twinYes = 0;
        while (yes + no < 150) {
            World world = world(random);
            TiltQuery query = world.query();
            if (!query.overlapped(new BitSet()).isEmpty()) {
                continue;
            }
            Way way = query.ask(new BitSet());
            boolean twin = twin(world);
            twinYes += twin ? 1 : 0;
            if (way.free()) {
                yes++;
                assertEveryMoveIsClear(seed, world, query, way);
            } else {
                no++;
                assertThat(twin).as("seed %d, %s", seed, world).isFalse();
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
        assertThat(yes).isGreaterThan(20);
        assertThat(no).isGreaterThan(20);
        assertThat(twinYes).isGreaterThan(10);
    }

    private static World world(Random random) {
        int height = random.nextInt(2, 5);
        int length = random.nextInt(1, 3);
        int width = random.nextInt(1, 3);
        int x = random.nextInt(0, ROOM - length + 1);
        int y = random.nextInt(0, ROOM - width + 1);
        List<Box> parts = new ArrayList<>(List.of(box(x, y, 0, x + length, y + width, height - 1)));
        parts.add(box(x, y, height - 1, x + 1, y + width, height));
        int doorY = random.nextInt(0, ROOM - 4);
        int doorWidth = random.nextInt(1, 4);
        int doorHeight = random.nextInt(1, 4);
        List<Obstacle> obstacles = new ArrayList<>();
        for (Box wall : List.of(
                box(-1, -20, -20, 0, doorY, 20),
                box(-1, doorY + doorWidth, -20, 0, 30, 20),
                box(-1, doorY, doorHeight, 0, doorY + doorWidth, 20),
                box(0, ROOM, -20, 20, 30, 20),
                box(0, -20, -20, 20, 0, 20),
                box(ROOM, -20, -20, 20, 30, 20))) {
            obstacles.add(new Obstacle(wall, Obstacle.FIXED));
        }
        for (int owner = random.nextInt(3, 10); owner >= 0; owner--) {
            int ox = random.nextInt(ROOM);
            int oy = random.nextInt(ROOM);
            int oz = random.nextInt(3);
            obstacles.add(new Obstacle(
                    box(ox, oy, oz, ox + random.nextInt(1, 4), oy + random.nextInt(1, 4), oz + random.nextInt(1, 4)),
                    owner));
        }
        Face side = List.of(Face.FRONT, Face.REAR, Face.LEFT, Face.RIGHT).get(random.nextInt(4));
        Box region = box(-8, -4, 0, ROOM, ROOM + 4, 5);
        return new World(parts, side, obstacles, region, box(-8, -4, 0, -1, ROOM + 4, 5));
    }

    private static Box box(int x0, int y0, int z0, int x1, int y1, int z1) {
        return new Box(x0 * UNIT, y0 * UNIT, z0 * UNIT, x1 * UNIT, y1 * UNIT, z1 * UNIT);
    }

    /** Floods all half-unit shifts, upright and lying; tilts where one cuboid that holds the whole tilt is free. */
    private static boolean twin(World world) {
        List<Box> lying = Tilted.by(world.parts(), world.side());
        Box arc = Turned.hull(Tilted.sweep(world.parts(), world.side()));
        Set<Spot> seen = new HashSet<>();
        Deque<Spot> open = new ArrayDeque<>(List.of(new Spot(Point.ORIGIN, false)));
        while (!open.isEmpty()) {
            Spot spot = open.remove();
            List<Box> parts = spot.lying() ? lying : world.parts();
            if (!seen.add(spot) || !free(world, parts, spot.at())) {
                continue;
            }
            if (spot.lying() && parts.stream().allMatch(part -> world.target().contains(part.moved(spot.at())))) {
                return true;
            }
            for (Axis axis : Axis.values()) {
                open.add(new Spot(spot.at().with(axis, spot.at().along(axis) + UNIT / 2), spot.lying()));
                open.add(new Spot(spot.at().with(axis, spot.at().along(axis) - UNIT / 2), spot.lying()));
            }
            if (!spot.lying() && free(world, List.of(arc), spot.at())) {
                open.add(new Spot(spot.at(), true));
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

    private static void assertEveryMoveIsClear(long seed, World world, TiltQuery query, Way way) {
        List<Stage> stages = way.stages();
        assertThat(stages.get(0)).isEqualTo(Stage.START);
        int tilts = 0;
        for (int i = 1; i < stages.size(); i++) {
            Stage from = stages.get(i - 1);
            Stage to = stages.get(i);
            if (from.lying() != to.lying()) {
                assertThat(from.shift()).isEqualTo(to.shift());
                assertTiltIsClear(seed, world, from.shift());
                tilts++;
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
        assertThat(tilts).isEqualTo(1);
        assertThat(query.at(stages.get(stages.size() - 1))).allMatch(world.target()::contains);
    }

    /** Tilts the thing in steps of three degrees and looks whether a grid of its points gets into an obstacle. */
    private static void assertTiltIsClear(long seed, World world, Point shift) {
        Box hull = world.parts().stream().reduce(Box::hull).orElseThrow().moved(shift);
        Axis axis = world.side().axis();
        int sign = world.side().sign();
        int edge = sign > 0 ? hull.high(axis) : hull.low(axis);
        for (Box part : world.parts()) {
            Box p = part.moved(shift);
            for (int degree = 0; degree <= 90; degree += 3) {
                double cos = Math.cos(Math.toRadians(degree));
                double sin = Math.sin(Math.toRadians(degree));
                for (int i = 0; i <= 4; i++) {
                    for (int j = 0; j <= 4; j++) {
                        double u = sign * (p.low(axis) + (p.high(axis) - p.low(axis)) * i / 4.0 - edge);
                        double w = p.z0() + (p.z1() - p.z0()) * j / 4.0 - hull.z0();
                        double along = edge + sign * (u * cos + w * sin);
                        double z = hull.z0() - u * sin + w * cos;
                        assertThat(world.obstacles())
                                .as("seed %d, %s at %s, %d degrees", seed, world, shift, degree)
                                .noneMatch(one -> within(one.box(), axis, along, p, z));
                    }
                }
            }
        }
    }

    private static boolean within(Box box, Axis axis, double along, Box part, double z) {
        double slack = 1e-6;
        Axis other = axis == Axis.X ? Axis.Y : Axis.X;
        return box.low(axis) + slack < along
                && along < box.high(axis) - slack
                && box.low(other) < part.high(other)
                && part.low(other) < box.high(other)
                && box.z0() + slack < z
                && z < box.z1() - slack;
    }

    @Test
    void aTallThingComesLyingUnderALowDoorAndNeedsItsDiagonalToStandUp() {
        // 3 wide, 4 high: its diagonal is 5, so it stands up under a roof at 5 and not under one a micrometre lower.
        List<Box> thing = List.of(box(5, 2, 0, 8, 4, 4));
        List<Obstacle> walls = List.of(
                new Obstacle(box(-1, -5, 0, 0, 2, 9), Obstacle.FIXED),
                new Obstacle(box(-1, 4, 0, 0, 9, 9), Obstacle.FIXED),
                new Obstacle(box(-1, 2, 3, 0, 4, 9), Obstacle.FIXED));
        Box low = new Box(-9000, -5000, 0, 9000, 9000, 4999);
        Box target = box(-9, -5, 0, -1, 9, 4);

        Way way = new TiltQuery(thing, Face.REAR, walls, box(-9, -5, 0, 9, 9, 5), target).ask(new BitSet());

        assertThat(way.free()).isTrue();
        assertThat(way.stages()).filteredOn(Stage::lying).isNotEmpty();
        assertThat(new TiltQuery(thing, Face.REAR, walls, low, target)
                        .ask(new BitSet())
                        .free())
                .isFalse();
        assertThat(new WayQuery(thing, walls, box(-9, -5, 0, 9, 9, 5), target, true)
                        .ask(new BitSet())
                        .free())
                .isFalse();
    }

    @Test
    void nothingIsLaidOnItsTop() {
        Box any = box(0, 0, 0, 1, 1, 1);
        assertThatThrownBy(() -> new TiltQuery(List.of(any), Face.TOP, List.of(), any, any))
                .hasMessage("A thing is tilted over on one of its upright sides.");
    }
}
