package org.shelterwright.layouts.ledger.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.space.Size;

/** The widths that the search asks for, the widest ways and the raster agree on small random floors, exact fits included. */
class WalkwayTwinTest {
    private static final int WORLDS = 700;

    private record World(Rect room, List<Rect> obstacles, List<Opening> doors, List<Rect> targets) {}

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void allThreeAgree(long seed) {
        Random random = new Random(seed);
        int reached = 0;
        int barred = 0;
        for (int i = 0; i < WORLDS; i++) {
            World world = world(random);
            WidestWays ways = ways(world);
            int widest = Math.min(world.room().x1(), world.room().y1()) + 1;
            int least = 1 + i % 3;
            int[] searched = widths(world, least);
            for (int width = 1; width <= widest; width++) {
                RasterWalk raster = new RasterWalk(world.room(), world.obstacles(), width, world.doors());
                for (int t = 0; t < world.targets().size(); t++) {
                    Rect target = world.targets().get(t);
                    boolean truth = raster.reaches(target);
                    String about = "seed " + seed + ", world " + i + ", width " + width + ", " + world;
                    if (width >= least) {
                        assertThat(searched[t] >= width).as("search, " + about).isEqualTo(truth);
                    }
                    assertThat(ways.to(target).width() >= width)
                            .as("widest, " + about)
                            .isEqualTo(truth);
                    reached += truth ? 1 : 0;
                    barred += truth ? 0 : 1;
                }
            }
        }
        assertThat(reached).as("worlds that let through").isGreaterThan(500);
        assertThat(barred).as("worlds that bar").isGreaterThan(500);
    }

    private static WidestWays ways(World world) {
        Size inside = new Size(world.room().x1(), world.room().y1(), 10);
        List<WayIn> doors =
                world.doors().stream().map(door -> WayIn.of(door, inside)).toList();
        return new WidestWays(FreeFloor.of(world.room(), world.obstacles()), doors);
    }

    private static int[] widths(World world, int least) {
        WayWidths widths = new WayWidths(world.room().x1(), world.room().y1(), least);
        widths.floor(flat(world.obstacles()), world.obstacles().size());
        int[] doors =
                flat(world.doors().stream().map(door -> Rect.of(door.area())).toList());
        widths.from(doors, 0, doors.length);
        int[] targets = flat(world.targets());
        return IntStream.range(0, world.targets().size())
                .map(t -> widths.widest(targets, 4 * t, Integer.MAX_VALUE))
                .toArray();
    }

    private static int[] flat(List<Rect> rects) {
        return rects.stream()
                .flatMapToInt(r -> IntStream.of(r.x0(), r.y0(), r.x1(), r.y1()))
                .toArray();
    }

    private static World world(Random random) {
        Rect room = new Rect(0, 0, 4 + random.nextInt(9), 3 + random.nextInt(8));
        List<Rect> obstacles = new ArrayList<>();
        int count = random.nextInt(7);
        for (int i = 0; i < count; i++) {
            obstacles.add(rect(random, -2, room.x1() + 2, -2, room.y1() + 2, 5));
        }
        List<Opening> doors = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(2); i++) {
            doors.add(door(random, room));
        }
        List<Rect> targets = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            targets.add(rect(random, 0, room.x1(), 0, room.y1(), 4));
        }
        return new World(room, obstacles, doors, targets);
    }

    private static Opening door(Random random, Rect room) {
        Face wall = List.of(Face.REAR, Face.FRONT, Face.LEFT, Face.RIGHT).get(random.nextInt(4));
        int length = wall.axis() == Axis.X ? room.y1() : room.x1();
        int from = random.nextInt(length);
        int to = from + 1 + random.nextInt(length - from);
        Box along =
                wall.axis() == Axis.X ? new Box(0, from, 0, room.x1(), to, 5) : new Box(from, 0, 0, to, room.y1(), 5);
        return new Opening("door", Opening.Kind.DOOR, wall, along.face(wall), true, null);
    }

    @Test
    void onFloorsWithManyObstaclesBothWaysOfReckoningAgree() {
        Random random = new Random(99);
        Rect room = new Rect(0, 0, 4000, 2000);
        WayWidths searched = new WayWidths(room.x1(), room.y1(), 25);
        int reached = 0;
        for (int i = 0; i < 40; i++) {
            List<Rect> obstacles = new ArrayList<>();
            for (int o = 0; o < 150; o++) {
                obstacles.add(rect(random, 0, 4000, 0, 2000, 220));
            }
            List<Rect> targets = new ArrayList<>();
            for (int t = 0; t < 20; t++) {
                targets.add(rect(random, 0, 4000, 0, 2000, 400));
            }
            World world = new World(room, obstacles, List.of(door(random, room), door(random, room)), targets);
            WidestWays ways = ways(world);
            int[] doors = flat(
                    world.doors().stream().map(door -> Rect.of(door.area())).toList());
            assertThat(searched.floor(flat(obstacles), obstacles.size())).isTrue();
            assertThat(searched.floor(flat(obstacles), obstacles.size()))
                    .as("the same floor again")
                    .isFalse();
            searched.from(doors, 0, doors.length);
            for (int t = 0; t < targets.size(); t++) {
                int width = ways.to(targets.get(t)).width();
                String about = "floor " + i + ", target " + t;
                assertThat(searched.widest(flat(targets), 4 * t, Integer.MAX_VALUE))
                        .as(about)
                        .isEqualTo(width < 25 ? 0 : width);
                assertThat(searched.widest(flat(targets), 4 * t, 60) >= 60)
                        .as(about)
                        .isEqualTo(width >= 60);
                reached += width < 25 ? 0 : 1;
            }
        }
        assertThat(reached).isBetween(200, 795);
    }

    private static Rect rect(Random random, int x0, int x1, int y0, int y1, int most) {
        int x = x0 + random.nextInt(x1 - x0);
        int y = y0 + random.nextInt(y1 - y0);
        int toX = Math.min(x1, x + 1 + random.nextInt(most));
        int toY = Math.min(y1, y + 1 + random.nextInt(most));
        return Rect.of(new Box(x, y, 0, toX, toY, 0));
    }
}
