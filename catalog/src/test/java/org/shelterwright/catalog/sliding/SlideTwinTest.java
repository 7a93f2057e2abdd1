package org.shelterwright.catalog.sliding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;

/** Holds the exact search against a plain flood over a raster of half units, which is the exact truth on whole numbers. */
class SlideTwinTest {
    private static final int ROOM = 7;

    private record World(List<Box> parts, List<Obstacle> obstacles, Box domain, Box goal) {}

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void agreesWithTheRasterTwin(long seed) {
        Random random = new Random(seed);
        int free = 0;
        int stuck = 0;
        while (free + stuck < 150) {
            World world = world(random);
            SlideSpace space = new SlideSpace(world.parts(), world.obstacles(), world.domain());
            if (!space.free(Point.ORIGIN, new BitSet())) {
                continue;
            }
            Slide slide = space.slide(Point.ORIGIN, world.goal(), new BitSet());

            assertThat(slide.free()).as("seed %d, %s", seed, world).isEqualTo(twin(world));
            if (slide.free()) {
                free++;
                assertPathIsClear(world, slide.path());
            } else {
                stuck++;
                assertFrontierAloneHoldsIt(world, space, slide);
            }
        }
        assertThat(free).isGreaterThan(20);
        assertThat(stuck).isGreaterThan(20);
    }

    /** A small room with a door in its rear wall, often exactly as wide as the moving thing; the thing starts at shift zero. */
    private static World world(Random random) {
        int x = random.nextInt(3, ROOM - 1);
        int y = random.nextInt(0, ROOM - 2);
        int width = random.nextInt(1, 3);
        int height = random.nextInt(1, 3);
        List<Box> parts = new ArrayList<>(List.of(new Box(x, y, 0, x + random.nextInt(1, 3), y + width, height)));
        for (int i = random.nextInt(3); i > 0; i--) {
            parts.add(cuboid(random, x, y, 0, 2));
        }
        int doorY = random.nextInt(0, ROOM - width);
        int doorWidth = random.nextInt(3) == 0 ? width : width + random.nextInt(0, 3);
        int doorTop = height + random.nextInt(0, 3);
        List<Obstacle> obstacles = new ArrayList<>();
        for (Box wall : List.of(
                new Box(-1, -20, -20, 0, doorY, 20),
                new Box(-1, Math.min(doorY + doorWidth, 20), -20, 0, 20, 20),
                new Box(-1, doorY, doorTop, 0, doorY + doorWidth, 20),
                new Box(-20, -20, -20, 20, 20, 0),
                new Box(0, -20, ROOM, 20, 20, 20),
                new Box(0, ROOM, 0, 20, 20, ROOM),
                new Box(0, -20, 0, 20, 0, ROOM))) {
            obstacles.add(new Obstacle(wall, Obstacle.FIXED));
        }
        int others = random.nextInt(6);
        for (int owner = 0; owner < others; owner++) {
            for (int i = random.nextInt(3); i >= 0; i--) {
                obstacles.add(new Obstacle(
                        cuboid(random, random.nextInt(ROOM), random.nextInt(ROOM), random.nextInt(4), 4), owner));
            }
        }
        Box domain = new Box(-14, -4, 0, 4, ROOM, ROOM);
        return new World(parts, obstacles, domain, new Box(-14, -4, 0, -12, ROOM, ROOM));
    }

    private static Box cuboid(Random random, int x, int y, int z, int most) {
        return new Box(
                x,
                y,
                z,
                x + random.nextInt(1, most + 1),
                y + random.nextInt(1, most + 1),
                z + random.nextInt(1, most + 1));
    }

    /** Floods all half-unit shifts; two neighbours are joined if both are free, since free space is closed. */
    private static boolean twin(World world) {
        Box d = world.domain();
        int ny = 2 * d.extent(Axis.Y) + 1;
        int nz = 2 * d.extent(Axis.Z) + 1;
        BitSet seen = new BitSet();
        Deque<int[]> open = new ArrayDeque<>();
        open.add(new int[] {-2 * d.x0(), -2 * d.y0(), -2 * d.z0()});
        while (!open.isEmpty()) {
            int[] at = open.remove();
            if (at[0] < 0
                    || at[1] < 0
                    || at[2] < 0
                    || at[0] > 2 * d.extent(Axis.X)
                    || at[1] >= ny
                    || at[2] >= nz
                    || seen.get((at[0] * ny + at[1]) * nz + at[2])
                    || hits(world, at[0] + 2 * d.x0(), at[1] + 2 * d.y0(), at[2] + 2 * d.z0())) {
                continue;
            }
            seen.set((at[0] * ny + at[1]) * nz + at[2]);
            if (at[0] + 2 * d.x0() <= 2 * world.goal().x1()) {
                return true;
            }
            for (int axis = 0; axis < 3; axis++) {
                for (int step = -1; step <= 1; step += 2) {
                    int[] next = at.clone();
                    next[axis] += step;
                    open.add(next);
                }
            }
        }
        return false;
    }

    private static boolean hits(World world, int x2, int y2, int z2) {
        for (Box part : world.parts()) {
            for (Obstacle obstacle : world.obstacles()) {
                Box o = obstacle.box();
                if (2 * part.x0() + x2 < 2 * o.x1()
                        && 2 * o.x0() < 2 * part.x1() + x2
                        && 2 * part.y0() + y2 < 2 * o.y1()
                        && 2 * o.y0() < 2 * part.y1() + y2
                        && 2 * part.z0() + z2 < 2 * o.z1()
                        && 2 * o.z0() < 2 * part.z1() + z2) {
                    return true;
                }
            }
        }
        return false;
    }

    private static void assertPathIsClear(World world, List<Point> path) {
        assertThat(path.get(0)).isEqualTo(Point.ORIGIN);
        for (int i = 1; i < path.size(); i++) {
            Point from = path.get(i - 1);
            Point way = path.get(i).minus(from);
            Axis axis = way.x() != 0 ? Axis.X : way.y() != 0 ? Axis.Y : Axis.Z;
            assertThat(way.with(axis, 0)).as("one axis at a time").isEqualTo(Point.ORIGIN);
            for (Box part : world.parts()) {
                Box swept = part.moved(from).swept(axis, way.along(axis));
                assertThat(world.obstacles())
                        .noneMatch(obstacle -> obstacle.box().overlaps(swept));
            }
        }
    }

    private static void assertFrontierAloneHoldsIt(World world, SlideSpace space, Slide slide) {
        BitSet gone = new BitSet();
        world.obstacles().stream()
                .mapToInt(Obstacle::owner)
                .filter(owner -> owner >= 0)
                .forEach(gone::set);
        gone.andNot(slide.frontier());

        assertThat(space.slide(Point.ORIGIN, world.goal(), gone).free())
                .as("with nothing left but the frontier, %s", world)
                .isFalse();
    }
}
