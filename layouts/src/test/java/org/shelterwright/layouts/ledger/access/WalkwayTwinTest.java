package org.shelterwright.layouts.ledger.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.space.Size;

/** The sweep for one width, the widest ways and the raster agree on small random floors, exact fits included. */
class WalkwayTwinTest {
    private static final int WORLDS = 700;
    private final WalkwayQuery query = new WalkwayQuery();

    private record World(Rect room, List<Rect> obstacles, List<Rect> doors, List<Rect> targets) {}

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
            for (int width = 1; width <= widest; width++) {
                RasterWalk raster = new RasterWalk(world.room(), world.obstacles(), width, world.doors());
                boolean[] swept = swept(world, width);
                for (int t = 0; t < world.targets().size(); t++) {
                    Rect target = world.targets().get(t);
                    boolean truth = raster.reaches(target);
                    String about = "seed " + seed + ", world " + i + ", width " + width + ", " + world;
                    assertThat(swept[t]).as("sweep, " + about).isEqualTo(truth);
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
        List<WayIn> doors = world.doors().stream()
                .map(door -> new Opening("door", Opening.Kind.DOOR, Face.REAR, door.at(0, 5), true, null))
                .map(opening -> WayIn.of(opening, inside))
                .toList();
        return new WidestWays(FreeFloor.of(world.room(), world.obstacles()), doors);
    }

    private boolean[] swept(World world, int width) {
        return query.reached(
                world.room().x1(),
                world.room().y1(),
                width,
                flat(world.obstacles()),
                world.obstacles().size(),
                flat(world.doors()),
                flat(world.targets()));
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
        List<Rect> doors = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(2); i++) {
            int from = random.nextInt(room.y1());
            int to = from + 1 + random.nextInt(room.y1() - from);
            doors.add(new Rect(0, from, 0, to));
        }
        List<Rect> targets = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            targets.add(rect(random, 0, room.x1(), 0, room.y1(), 4));
        }
        return new World(room, obstacles, doors, targets);
    }

    private static Rect rect(Random random, int x0, int x1, int y0, int y1, int most) {
        int x = x0 + random.nextInt(x1 - x0);
        int y = y0 + random.nextInt(y1 - y0);
        int toX = Math.min(x1, x + 1 + random.nextInt(most));
        int toY = Math.min(y1, y + 1 + random.nextInt(most));
        return Rect.of(new Box(x, y, 0, toX, toY, 0));
    }
}
