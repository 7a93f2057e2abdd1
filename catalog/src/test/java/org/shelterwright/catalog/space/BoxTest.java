package org.shelterwright.catalog.space;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class BoxTest {
    private static final int SAMPLES = 2000;

    @Test
    void touchingIsNotOverlapping() {
        Box box = Box.ofMm(0, 0, 0, 100, 100, 100);

        assertThat(box.overlaps(Box.ofMm(100, 0, 0, 200, 100, 100))).isFalse();
        assertThat(box.overlaps(Box.ofMm(0, 100, 0, 100, 200, 100))).isFalse();
        assertThat(box.overlaps(Box.ofMm(0, 0, 100, 100, 100, 200))).isFalse();
        assertThat(box.overlaps(new Box(99_999, 0, 0, 200_000, 100_000, 100_000)))
                .isTrue();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void cuboidsTouchIfTheyShareAPoint(long seed) {
        RandomSpace random = new RandomSpace(seed);
        for (int i = 0; i < SAMPLES; i++) {
            Box a = random.box();
            Box b = random.box();
            boolean part = a.gap(b, Axis.X) <= 0 && a.gap(b, Axis.Y) <= 0 && a.gap(b, Axis.Z) <= 0;
            assertThat(a.touches(b)).as(a + " " + b).isEqualTo(b.touches(a)).isEqualTo(part);
        }
        Box box = Box.ofMm(0, 0, 0, 100, 100, 100);
        assertThat(box.touches(Box.ofMm(100, 100, 100, 200, 200, 200))).isTrue();
        assertThat(box.touches(Box.ofMm(101, 0, 0, 200, 100, 100))).isFalse();
    }

    @Test
    void aFlatCuboidOverlapsNothing() {
        Box flat = Box.ofMm(10, 10, 10, 10, 50, 50);

        assertThat(flat.flat()).isTrue();
        assertThat(flat.overlaps(Box.ofMm(0, 0, 0, 100, 100, 100))).isFalse();
        assertThat(Box.ofMm(0, 0, 0, 100, 100, 100).overlaps(flat)).isFalse();
        assertThat(flat.overlaps(flat)).isFalse();
        assertThat(Box.ofMm(0, 5, 0, 9, 5, 9).flat()).isTrue();
        assertThat(Box.ofMm(0, 0, 5, 9, 9, 5).flat()).isTrue();
        assertThat(Box.ofMm(0, 0, 0, 1, 1, 1).flat()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void overlapIsSymmetricAndIsThatOfUnitCells(long seed) {
        RandomSpace random = new RandomSpace(seed);
        for (int i = 0; i < SAMPLES; i++) {
            Box a = random.box();
            Box b = random.box();
            assertThat(a.overlaps(b)).as(a + " " + b).isEqualTo(b.overlaps(a)).isEqualTo(shareACell(a, b));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {4, 5, 6})
    void depthIsTheLeastShiftThatParts(long seed) {
        RandomSpace random = new RandomSpace(seed);
        for (int i = 0; i < SAMPLES; i++) {
            Box a = random.box();
            Box b = random.box();
            int depth = a.depth(b);
            assertThat(depth).isEqualTo(b.depth(a));
            assertThat(partedBy(a, b, depth)).as(a + " " + b).isTrue();
            if (depth > 0) {
                assertThat(partedBy(a, b, depth - 1)).as(a + " " + b).isFalse();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {7, 8, 9})
    void forbiddenShiftsAreThoseThatMakeAPartOverlap(long seed) {
        RandomSpace random = new RandomSpace(seed);
        for (int i = 0; i < 40; i++) {
            Box obstacle = random.box();
            Box part = random.box();
            if (obstacle.flat() || part.flat()) {
                continue;
            }
            Box forbidden = obstacle.forbiddenShifts(part);
            for (int x = forbidden.x0() - 1; x <= forbidden.x1() + 1; x++) {
                for (int y = forbidden.y0() - 1; y <= forbidden.y1() + 1; y++) {
                    for (int z = forbidden.z0() - 1; z <= forbidden.z1() + 1; z++) {
                        assertThat(part.moved(x, y, z).overlaps(obstacle))
                                .isEqualTo(strictlyInside(forbidden, x, y, z));
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Axis.class)
    void sweptHoldsEveryPlaceOnTheWayAndNoMore(Axis axis) {
        Box box = Box.ofMm(1, 2, 3, 4, 6, 8);
        for (int way : new int[] {-5000, -1, 0, 1, 7000}) {
            Box swept = box.swept(axis, way);
            Box end = box.moved(Point.ORIGIN.with(axis, way));
            assertThat(swept).isEqualTo(box.hull(end));
        }
    }

    @Test
    void gapIsTheFreeDistanceAndNegativeWhereBothShare() {
        Box a = Box.ofMm(0, 0, 0, 10, 10, 10);

        assertThat(a.gap(Box.ofMm(15, 0, 0, 20, 10, 10), Axis.X)).isEqualTo(5000);
        assertThat(Box.ofMm(15, 0, 0, 20, 10, 10).gap(a, Axis.X)).isEqualTo(5000);
        assertThat(a.gap(Box.ofMm(0, 7, 0, 10, 20, 10), Axis.Y)).isEqualTo(-3000);
        assertThat(a.gap(Box.ofMm(0, 0, 10, 10, 10, 20), Axis.Z)).isZero();
    }

    @Test
    void intersectionIsTheSharedPartAndFlatWhereTheyTouch() {
        Box a = Box.ofMm(0, 0, 0, 10, 20, 30);

        assertThat(a.intersection(Box.ofMm(5, -5, 10, 50, 5, 50))).isEqualTo(Box.ofMm(5, 0, 10, 10, 5, 30));
        assertThat(a.intersection(Box.ofMm(10, 0, 0, 20, 20, 30)).flat()).isTrue();
        assertThatThrownBy(() -> a.intersection(Box.ofMm(11, 0, 0, 20, 20, 30)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void containsItsCornersAndNothingBeyond() {
        Box box = Box.ofMm(0, 0, 0, 10, 20, 30);

        assertThat(box.contains(box)).isTrue();
        for (Face face : Face.values()) {
            Point out = Point.ORIGIN.with(face.axis(), face.sign());
            assertThat(box.contains(box.moved(out))).as("%s", face).isFalse();
            Point corner = face.sign() > 0 ? box.high() : box.low();
            assertThat(box.contains(corner)).isTrue();
            assertThat(box.contains(corner.plus(out))).as("%s", face).isFalse();
        }
    }

    @Test
    void facesAreFlatAndLieOnTheirSide() {
        Box box = Box.ofMm(1, 2, 3, 4, 5, 6);

        assertThat(box.face(Face.FRONT)).isEqualTo(Box.ofMm(4, 2, 3, 4, 5, 6));
        assertThat(box.face(Face.REAR)).isEqualTo(Box.ofMm(1, 2, 3, 1, 5, 6));
        assertThat(box.face(Face.LEFT)).isEqualTo(Box.ofMm(1, 5, 3, 4, 5, 6));
        assertThat(box.face(Face.RIGHT)).isEqualTo(Box.ofMm(1, 2, 3, 4, 2, 6));
        assertThat(box.face(Face.TOP)).isEqualTo(Box.ofMm(1, 2, 6, 4, 5, 6));
        assertThat(box.face(Face.BOTTOM)).isEqualTo(Box.ofMm(1, 2, 3, 4, 5, 3));
    }

    @Test
    void measuresItself() {
        Box box = Box.of(Point.ofMm(100, 200, 300), Size.ofMm(1000, 2000, 500));

        assertThat(box.volumeM3()).isCloseTo(1.0, within(1e-12));
        assertThat(box.centre()).isEqualTo(Point.ofMm(600, 1200, 550));
        assertThat(new Box(0, 0, 0, 1, 3, 5).centre()).isEqualTo(new Point(0, 1, 2));
        assertThat(new Box(-3, -3, -3, 0, 0, 0).centre()).isEqualTo(new Point(-2, -2, -2));
        assertThat(box.extent(Axis.X)).isEqualTo(1_000_000);
        assertThat(box.extent(Axis.Y)).isEqualTo(2_000_000);
        assertThat(box.extent(Axis.Z)).isEqualTo(500_000);
        assertThat(box.grown(1, 2, 3)).isEqualTo(new Box(99_999, 199_998, 299_997, 1_100_001, 2_200_002, 800_003));
    }

    @Test
    void refusesTurnedCornersAndFarPlaces() {
        assertThatThrownBy(() -> Box.ofMm(10, 0, 0, 5, 1, 1))
                .hasMessage("The low x = 10 mm of a cuboid must not be above its high x = 5 mm.");
        assertThatThrownBy(() -> Box.ofMm(0, 10, 0, 1, 5, 1)).hasMessageContaining("low y = 10 mm");
        assertThatThrownBy(() -> Box.ofMm(0, 0, 10, 1, 1, 5)).hasMessageContaining("low z = 10 mm");
        assertThatThrownBy(() -> new Box(0, 0, 0, 500_000_001, 1, 1))
                .hasMessage("The coordinate x = 500000.001 mm lies more than 500 m from the origin."
                        + " Maybe the unit is wrong.");
        assertThatThrownBy(() -> new Box(0, -500_000_001, 0, 1, 1, 1)).hasMessageContaining("coordinate y");
        assertThatThrownBy(() -> new Box(0, 0, 0, 1, 1, 500_000_001)).hasMessageContaining("coordinate z");
        assertThat(new Box(-500_000_000, 0, 0, 500_000_000, 1, 1).extent(Axis.X))
                .isEqualTo(1_000_000_000);
    }

    private static boolean shareACell(Box a, Box b) {
        for (int x = a.x0(); x < a.x1(); x++) {
            for (int y = a.y0(); y < a.y1(); y++) {
                for (int z = a.z0(); z < a.z1(); z++) {
                    boolean inX = b.x0() <= x && x < b.x1();
                    boolean inY = b.y0() <= y && y < b.y1();
                    if (inX && inY && b.z0() <= z && z < b.z1()) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private static boolean partedBy(Box a, Box b, int shift) {
        for (Face way : Face.values()) {
            if (!a.moved(Point.ORIGIN.with(way.axis(), way.sign() * shift)).overlaps(b)) {
                return true;
            }
        }
        return false;
    }

    private static boolean strictlyInside(Box box, int x, int y, int z) {
        return box.x0() < x && x < box.x1() && box.y0() < y && y < box.y1() && box.z0() < z && z < box.z1();
    }
}
