package org.shelterwright.layouts.insight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Box;

/** The largest open cuboid, held against trying every pair of borders on each axis. */
class OpenBoxesTest {
    private static final Box FRAME = Box.ofMm(0, 0, 0, 40, 30, 20);

    @Test
    void findsAsMuchAsTryingAllBordersDoes() {
        for (int seed = 1; seed <= 200; seed++) {
            List<Box> filled = filled(new Random(seed));

            Box found = new OpenBoxes(FRAME, filled).largest().orElseThrow();

            assertThat(filled).as("seed %d", seed).noneMatch(found::overlaps);
            assertThat(FRAME.contains(found)).isTrue();
            assertThat(volume(found)).as("seed %d", seed).isEqualTo(plain(filled, false));
        }
    }

    @Test
    void findsTheLargestThatStandsOnTheFloor() {
        for (int seed = 1; seed <= 200; seed++) {
            List<Box> filled = filled(new Random(seed));

            List<Box> found = new OpenBoxes(FRAME, filled).onFloor();

            assertThat(found).as("seed %d", seed).allMatch(box -> box.z0() == 0);
            assertThat(found.isEmpty() ? 0 : volume(found.get(0)))
                    .as("seed %d", seed)
                    .isEqualTo(plain(filled, true));
        }
    }

    @Test
    void thereIsNoneInAFullFrameAndAllOfAnEmptyOne() {
        assertThat(new OpenBoxes(FRAME, List.of(FRAME.grown(5, 5, 5))).largest())
                .isEmpty();
        assertThat(new OpenBoxes(FRAME, List.of()).largest()).contains(FRAME);
        assertThat(new OpenBoxes(FRAME, List.of(FRAME)).onFloor()).isEmpty();
    }

    private static List<Box> filled(Random random) {
        List<Box> filled = new ArrayList<>();
        int count = 1 + random.nextInt(6);
        for (int i = 0; i < count; i++) {
            int x = random.nextInt(40) - 3;
            int y = random.nextInt(30) - 3;
            int z = random.nextInt(4) == 0 ? 0 : random.nextInt(20);
            filled.add(Box.ofMm(
                    x, y, z, x + 1 + random.nextInt(20), y + 1 + random.nextInt(15), z + 1 + random.nextInt(12)));
        }
        return filled;
    }

    private static long plain(List<Box> filled, boolean onFloor) {
        TreeSet<Integer> xs = new TreeSet<>(List.of(FRAME.x0(), FRAME.x1()));
        TreeSet<Integer> ys = new TreeSet<>(List.of(FRAME.y0(), FRAME.y1()));
        TreeSet<Integer> zs = new TreeSet<>(List.of(FRAME.z0(), FRAME.z1()));
        for (Box box : filled) {
            add(xs, box.x0(), box.x1(), FRAME.x1());
            add(ys, box.y0(), box.y1(), FRAME.y1());
            add(zs, box.z0(), box.z1(), FRAME.z1());
        }
        long most = 0;
        for (int x0 : xs) {
            for (int x1 : xs.tailSet(x0, false)) {
                for (int y0 : ys) {
                    for (int y1 : ys.tailSet(y0, false)) {
                        for (int z0 : onFloor ? List.of(0) : zs) {
                            for (int z1 : zs.tailSet(z0, false)) {
                                Box box = new Box(x0, y0, z0, x1, y1, z1);
                                if (volume(box) > most && filled.stream().noneMatch(box::overlaps)) {
                                    most = volume(box);
                                }
                            }
                        }
                    }
                }
            }
        }
        return most;
    }

    private static void add(TreeSet<Integer> borders, int low, int high, int end) {
        if (low > 0 && low < end) {
            borders.add(low);
        }
        if (high > 0 && high < end) {
            borders.add(high);
        }
    }

    private static long volume(Box box) {
        return (long) (box.x1() - box.x0()) / 1000 * ((box.y1() - box.y0()) / 1000) * ((box.z1() - box.z0()) / 1000);
    }
}
