package org.shelterwright.catalog.sliding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;

class TurnedTest {
    private final Box part = Box.ofMm(0, 0, 0, 600, 400, 1000);

    @Test
    void fourQuartersBringItBack() {
        Point pivot = Turned.pivot(List.of(part));
        List<Box> once = Turned.by(List.of(part), 1, pivot);

        assertThat(once).containsExactly(Box.ofMm(100, -100, 0, 500, 500, 1000));
        assertThat(Turned.by(once, 3, pivot)).containsExactly(part);
    }

    @Test
    void theSweepHoldsEveryCornerAtEveryAngle() {
        Point pivot = Turned.pivot(List.of(part));
        List<Box> sweep = Turned.sweep(List.of(part), pivot);
        double r = Math.hypot(300_000, 200_000);
        for (int tenth = 0; tenth < 3600; tenth++) {
            double x = pivot.x() + r * Math.cos(Math.toRadians(tenth / 10.0));
            double y = pivot.y() + r * Math.sin(Math.toRadians(tenth / 10.0));

            assertThat(sweep).anyMatch(box -> box.x0() <= x && x <= box.x1() && box.y0() <= y && y <= box.y1());
        }
    }

    @Test
    void roundsRootsUp() {
        assertThat(Turned.rootUp(0)).isZero();
        assertThat(Turned.rootUp(16)).isEqualTo(4);
        assertThat(Turned.rootUp(17)).isEqualTo(5);
        assertThat(Turned.rootUp(999_999_999_999_999_999L)).isEqualTo(1_000_000_000L);
    }
}
