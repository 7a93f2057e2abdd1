package org.shelterwright.layouts.boltdown;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Point;

class TighteningTest {
    @Test
    void fourFixingsAreTightenedAcrossTheMiddle() {
        List<Point> places =
                List.of(Point.ofMm(0, 0, 0), Point.ofMm(0, 500, 0), Point.ofMm(600, 0, 0), Point.ofMm(600, 500, 0));

        // Common practice: the second is the one across, then a side, then the one across of that.
        assertThat(Tightening.crosswise(places).subList(0, 2)).containsExactly(0, 3);
        assertThat(Tightening.crosswise(places)).containsExactlyInAnyOrder(0, 1, 2, 3);
    }

    @Test
    void everyPairOfARegularPatternLiesAcross() {
        List<Point> places = List.of(
                Point.ofMm(0, 0, 0),
                Point.ofMm(300, 0, 0),
                Point.ofMm(600, 0, 0),
                Point.ofMm(0, 500, 0),
                Point.ofMm(300, 500, 0),
                Point.ofMm(600, 500, 0));

        List<Integer> order = Tightening.crosswise(places);

        for (int i = 0; i < 6; i += 2) {
            Point a = places.get(order.get(i));
            Point b = places.get(order.get(i + 1));
            assertThat(a.plus(b)).as("pair %d", i / 2).isEqualTo(Point.ofMm(600, 500, 0));
        }
    }

    @Test
    void oneAndNoFixingAreNoTrouble() {
        assertThat(Tightening.crosswise(List.of())).isEmpty();
        assertThat(Tightening.crosswise(List.of(Point.ofMm(1, 2, 3)))).containsExactly(0);
    }
}
