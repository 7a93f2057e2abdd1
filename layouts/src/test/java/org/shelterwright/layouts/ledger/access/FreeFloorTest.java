package org.shelterwright.layouts.ledger.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.space.Rect;

/** The maximal free rectangles are those that a plain search finds. */
class FreeFloorTest {
    @Test
    void anEmptyFloorIsOneRectangle() {
        Rect floor = new Rect(0, 0, 40, 20);

        assertThat(FreeFloor.of(floor, List.of())).containsExactly(floor);
        assertThat(FreeFloor.of(floor, List.of(new Rect(40, 0, 50, 20)))).containsExactly(floor);
    }

    @Test
    void aBlockInTheMiddleLeavesFour() {
        assertThat(FreeFloor.of(new Rect(0, 0, 40, 20), List.of(new Rect(10, 5, 30, 15))))
                .containsExactlyInAnyOrder(
                        new Rect(0, 0, 40, 5),
                        new Rect(0, 15, 40, 20),
                        new Rect(0, 0, 10, 20),
                        new Rect(30, 0, 40, 20));
    }

    @Test
    void aCoveredFloorHasNone() {
        assertThat(FreeFloor.of(new Rect(0, 0, 4, 2), List.of(new Rect(-1, -1, 9, 9))))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void theSetIsThatOfAPlainSearch(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 300; i++) {
            Rect floor = new Rect(0, 0, 2 + random.nextInt(7), 2 + random.nextInt(6));
            List<Rect> obstacles = new ArrayList<>();
            int count = random.nextInt(8);
            for (int o = 0; o < count; o++) {
                int x = random.nextInt(10) - 1;
                int y = random.nextInt(9) - 1;
                obstacles.add(new Rect(x, y, x + 1 + random.nextInt(3), y + 1 + random.nextInt(3)));
            }
            assertThat(FreeFloor.of(floor, obstacles))
                    .as("seed " + seed + ", " + floor + " " + obstacles)
                    .doesNotHaveDuplicates()
                    .containsExactlyInAnyOrderElementsOf(plain(floor, obstacles));
        }
    }

    private static List<Rect> plain(Rect floor, List<Rect> obstacles) {
        List<Rect> maximal = new ArrayList<>();
        for (int x0 = 0; x0 < floor.x1(); x0++) {
            for (int y0 = 0; y0 < floor.y1(); y0++) {
                for (int x1 = x0 + 1; x1 <= floor.x1(); x1++) {
                    for (int y1 = y0 + 1; y1 <= floor.y1(); y1++) {
                        if (maximal(floor, obstacles, x0, y0, x1, y1)) {
                            maximal.add(new Rect(x0, y0, x1, y1));
                        }
                    }
                }
            }
        }
        return maximal;
    }

    private static boolean maximal(Rect floor, List<Rect> obstacles, int x0, int y0, int x1, int y1) {
        return free(floor, obstacles, new Rect(x0, y0, x1, y1))
                && !free(floor, obstacles, new Rect(x0 - 1, y0, x1, y1))
                && !free(floor, obstacles, new Rect(x0, y0 - 1, x1, y1))
                && !free(floor, obstacles, new Rect(x0, y0, x1 + 1, y1))
                && !free(floor, obstacles, new Rect(x0, y0, x1, y1 + 1));
    }

    private static boolean free(Rect floor, List<Rect> obstacles, Rect rect) {
        return floor.contains(rect) && obstacles.stream().noneMatch(rect::overlaps);
    }
}
