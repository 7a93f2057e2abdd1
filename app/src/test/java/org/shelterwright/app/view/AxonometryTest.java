package org.shelterwright.app.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

class AxonometryTest {

    private static final Point X = Point.ofMm(1000, 0, 0);
    private static final Point Y = Point.ofMm(0, 1000, 0);
    private static final Point Z = Point.ofMm(0, 0, 1000);

    /** In an isometric view all three axes are shortened alike, by √(2/3) (ISO 5456-3, isometric axonometry). */
    @Test
    void anIsometricViewShortensAllAxesAlike() {
        Axonometry isometric = new Axonometry(45, Math.toDegrees(Math.asin(1 / Math.sqrt(3))));

        for (Point axis : new Point[] {X, Y, Z}) {
            double length = Math.hypot(isometric.across(axis), isometric.up(axis)) * 1e-6;
            assertThat(length).isCloseTo(Math.sqrt(2.0 / 3), within(1e-12));
        }
    }

    @Test
    void fromTheRearRightForwardGoesRightAndUpAndLeftGoesLeftAndUp() {
        Axonometry view = Axonometry.FROM_REAR_RIGHT;

        assertThat(view.across(X)).isPositive();
        assertThat(view.up(X)).isPositive();
        assertThat(view.across(Y)).isNegative();
        assertThat(view.up(Y)).isPositive();
        assertThat(view.across(Z)).isZero();
        assertThat(view.depth(X)).isPositive();
        assertThat(view.depth(Z)).isNegative();
    }

    @Test
    void itSeesTheFacesThatLookToTheViewer() {
        assertThat(Block.seen(Axonometry.FROM_REAR_RIGHT)).containsExactly(Face.REAR, Face.RIGHT, Face.TOP);
        assertThat(Block.seen(Axonometry.FROM_FRONT_LEFT)).containsExactly(Face.FRONT, Face.LEFT, Face.TOP);
    }

    @Test
    void aViewFromBelowIsRefused() {
        assertThatThrownBy(() -> new Axonometry(33, -5)).hasMessageContaining("not -5.0°");
    }
}
