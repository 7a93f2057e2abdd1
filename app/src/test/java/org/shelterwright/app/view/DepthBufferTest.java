package org.shelterwright.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.drawing.Spot;

class DepthBufferTest {

    private static final List<Spot> SQUARE =
            List.of(new Spot(0, 0), new Spot(10, 0), new Spot(10, 10), new Spot(0, 10));

    @Test
    void theNearestPatchIsSeenWhateverTheOrder() {
        DepthBuffer buffer = new DepthBuffer(10, 10);
        buffer.put(SQUARE, new double[] {1, 1, 1, 1}, 1);
        buffer.put(SQUARE, new double[] {2, 2, 2, 2}, 2);

        assertThat(buffer.id(5, 5)).isEqualTo(1);
    }

    @Test
    void patchesThatRunIntoEachOtherAreCutWhereTheyMeet() {
        DepthBuffer buffer = new DepthBuffer(10, 10);
        buffer.put(SQUARE, new double[] {0, 10, 10, 0}, 1);
        buffer.put(SQUARE, new double[] {5, 5, 5, 5}, 2);

        assertThat(buffer.id(4, 3)).isEqualTo(1);
        assertThat(buffer.id(5, 3)).isEqualTo(2);
    }

    @Test
    void neighboursCoverEachSampleOnce() {
        int[] count = new int[100];
        DepthBuffer buffer = new DepthBuffer(10, 10);
        double[] flat = {0, 0, 0};
        DepthBuffer.Sample tally = (x, y, depth) -> count[y * 10 + x]++;
        buffer.cover(List.of(SQUARE.get(0), SQUARE.get(1), SQUARE.get(2)), flat, tally);
        buffer.cover(List.of(SQUARE.get(0), SQUARE.get(2), SQUARE.get(3)), flat, tally);

        assertThat(count).containsOnly(1);
    }

    @Test
    void whatLiesOutsideIsLeftOut() {
        DepthBuffer buffer = new DepthBuffer(4, 4);
        buffer.put(List.of(new Spot(-9, -9), new Spot(99, -9), new Spot(99, 2), new Spot(-9, 2)), new double[4], 7);

        assertThat(buffer.id(0, 1)).isEqualTo(7);
        assertThat(buffer.id(0, 2)).isEqualTo(DepthBuffer.NOTHING);
    }
}
