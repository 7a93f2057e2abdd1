package org.shelterwright.layouts.study.results;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Box;

class FreeRoomTest {
    /** Against counting the cells of a raster that all boxes lie on. */
    @Test
    void whatSeveralBoxesFillCountsOnce() {
        int side = 12;
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            List<Box> boxes = new ArrayList<>();
            for (int i = 0; i < random.nextInt(12); i++) {
                int[] low = random.ints(3, -3, side).toArray();
                int[] size = random.ints(3, 0, 7).toArray();
                boxes.add(Box.ofMm(low[0], low[1], low[2], low[0] + size[0], low[1] + size[1], low[2] + size[2]));
            }
            int cells = 0;
            for (int cell = 0; cell < side * side * side; cell++) {
                int x = cell % side;
                int y = cell / side % side;
                int z = cell / side / side;
                Box one = Box.ofMm(x, y, z, x + 1, y + 1, z + 1);
                cells += boxes.stream().anyMatch(one::overlaps) ? 1 : 0;
            }

            assertThat(FreeRoom.filledM3(Box.ofMm(0, 0, 0, side, side, side), boxes))
                    .as("seed %d", seed)
                    .isCloseTo(cells * 1e-9, within(1e-15));
        }
    }
}
