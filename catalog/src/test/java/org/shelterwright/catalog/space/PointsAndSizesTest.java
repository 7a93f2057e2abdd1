package org.shelterwright.catalog.space;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PointsAndSizesTest {
    @Test
    void pointsAddAndSubtractByAxis() {
        Point a = new Point(1, 2, 3);
        Point b = new Point(10, 200, 3000);

        assertThat(a.plus(b)).isEqualTo(new Point(11, 202, 3003));
        assertThat(b.minus(a)).isEqualTo(new Point(9, 198, 2997));
        assertThat(a.along(Axis.X)).isEqualTo(1);
        assertThat(a.along(Axis.Y)).isEqualTo(2);
        assertThat(a.along(Axis.Z)).isEqualTo(3);
        assertThat(a.with(Axis.X, 9)).isEqualTo(new Point(9, 2, 3));
        assertThat(a.with(Axis.Y, 9)).isEqualTo(new Point(1, 9, 3));
        assertThat(a.with(Axis.Z, 9)).isEqualTo(new Point(1, 2, 9));
    }

    @Test
    void pointsRefuseFarPlacesAndOverflow() {
        assertThatThrownBy(() -> new Point(0, 0, -500_000_001)).hasMessageContaining("z = -500000.001 mm");
        assertThatThrownBy(() -> new Point(500_000_001, 0, 0)).hasMessageContaining("coordinate x");
        assertThatThrownBy(() -> new Point(0, 500_000_001, 0)).hasMessageContaining("coordinate y");
        assertThatThrownBy(() -> Point.ofMm(3_000_000, 0, 0)).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void sizesMeasureAndRefuseNothing() {
        Size size = Size.ofMm(1000, 2000, 500);

        assertThat(size.volumeM3()).isCloseTo(1, within(1e-12));
        assertThat(size.box()).isEqualTo(Box.ofMm(0, 0, 0, 1000, 2000, 500));
        assertThat(size.along(Axis.X)).isEqualTo(1_000_000);
        assertThat(size.along(Axis.Y)).isEqualTo(2_000_000);
        assertThat(size.along(Axis.Z)).isEqualTo(500_000);
        assertThatThrownBy(() -> new Size(0, 1, 1)).hasMessage("The size x = 0 mm must be above zero.");
        assertThatThrownBy(() -> new Size(1, -1000, 1)).hasMessage("The size y = -1 mm must be above zero.");
        assertThatThrownBy(() -> new Size(1, 1, 0)).hasMessageContaining("size z");
        assertThatThrownBy(() -> new Size(1, 1, 500_000_001)).hasMessageContaining("Maybe the unit is wrong");
    }

    @Test
    void rectanglesShareAreas() {
        Rect rect = Rect.ofMm(0, 0, 1000, 500);

        assertThat(rect.areaM2()).isCloseTo(0.5, within(1e-12));
        assertThat(rect.sharedM2(Rect.ofMm(500, 250, 2000, 2000))).isCloseTo(0.125, within(1e-12));
        assertThat(rect.sharedM2(Rect.ofMm(1000, 0, 2000, 500))).isZero();
        assertThat(rect.sharedM2(Rect.ofMm(0, 600, 2000, 700))).isZero();
        assertThat(rect.sharedM2(Rect.ofMm(1100, 600, 2000, 700))).isZero();
        assertThat(rect.at(5, 6)).isEqualTo(new Box(0, 0, 5, 1_000_000, 500_000, 6));
        assertThat(Rect.of(Box.ofMm(1, 2, 3, 4, 5, 6))).isEqualTo(Rect.ofMm(1, 2, 4, 5));
    }

    @Test
    void rectanglesOverlapAsFlatCuboidsOfOneHeightWould() {
        RandomSpace random = new RandomSpace(11);
        for (int i = 0; i < 2000; i++) {
            Rect a = Rect.of(random.box());
            Rect b = Rect.of(random.box());
            assertThat(a.overlaps(b)).as(a + " " + b).isEqualTo(a.at(0, 1).overlaps(b.at(0, 1)));
            assertThat(a.contains(b)).isEqualTo(a.at(0, 1).contains(b.at(0, 1)));
        }
    }

    @Test
    void rectanglesRefuseTurnedCornersAndFarPlaces() {
        assertThatThrownBy(() -> new Rect(1, 0, 0, 1))
                .hasMessage("The low corner of a rectangle must not be above its high corner.");
        assertThatThrownBy(() -> new Rect(0, 1, 1, 0)).hasMessageContaining("low corner");
        assertThatThrownBy(() -> new Rect(-500_000_001, 0, 0, 0)).hasMessageContaining("coordinate x");
        assertThatThrownBy(() -> new Rect(0, -500_000_001, 0, 0)).hasMessageContaining("coordinate y");
        assertThatThrownBy(() -> new Rect(0, 0, 500_000_001, 0)).hasMessageContaining("coordinate x");
        assertThatThrownBy(() -> new Rect(0, 0, 0, 500_000_001)).hasMessageContaining("coordinate y");
        assertThat(new Rect(3, 3, 3, 3).areaM2()).isZero();
    }
}
