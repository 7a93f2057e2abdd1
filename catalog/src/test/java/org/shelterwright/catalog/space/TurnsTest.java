package org.shelterwright.catalog.space;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TurnsTest {
    @Test
    void aQuarterTurnBringsTheWorkedPointToItsPlace() {
        // the worked number of QuarterTurn: in 600 x 800, (100, 200) comes to (600, 100)
        assertThat(QuarterTurn.R90.apply(Point.ofMm(100, 200, 50), Size.ofMm(600, 800, 100)))
                .isEqualTo(Point.ofMm(600, 100, 50));
        assertThat(QuarterTurn.R180.apply(Point.ofMm(100, 200, 50), Size.ofMm(600, 800, 100)))
                .isEqualTo(Point.ofMm(500, 600, 50));
        assertThat(QuarterTurn.R270.apply(Point.ofMm(100, 200, 50), Size.ofMm(600, 800, 100)))
                .isEqualTo(Point.ofMm(200, 500, 50));
    }

    @Test
    void theFrontLooksToTheLeftAfterAQuarterTurn() {
        // positive from x to y, after ISO 8855
        assertThat(QuarterTurn.R90.apply(Face.FRONT)).isEqualTo(Face.LEFT);
        assertThat(QuarterTurn.R180.apply(Face.FRONT)).isEqualTo(Face.REAR);
        assertThat(QuarterTurn.R270.apply(Face.FRONT)).isEqualTo(Face.RIGHT);
        assertThat(QuarterTurn.R90.apply(Face.RIGHT)).isEqualTo(Face.FRONT);
        assertThat(QuarterTurn.R90.apply(Face.TOP)).isEqualTo(Face.TOP);
        assertThat(QuarterTurn.R90.apply(Face.BOTTOM)).isEqualTo(Face.BOTTOM);
    }

    @ParameterizedTest
    @EnumSource(QuarterTurn.class)
    void turningOnToAFullTurnComesBack(QuarterTurn turn) {
        RandomSpace random = new RandomSpace(turn.degrees());
        QuarterTurn back = QuarterTurn.ofDegrees((360 - turn.degrees()) % 360);
        for (int i = 0; i < 500; i++) {
            Size size = random.size();
            Box box = random.box();
            Point point = random.point();
            Size turned = turn.apply(size);
            assertThat(back.apply(turned)).isEqualTo(size);
            assertThat(back.apply(turn.apply(box, size), turned)).isEqualTo(box);
            assertThat(back.apply(turn.apply(point, size), turned)).isEqualTo(point);
        }
        for (Face face : Face.values()) {
            assertThat(back.apply(turn.apply(face))).isEqualTo(face);
        }
        assertThat(turn.plus(back)).isEqualTo(QuarterTurn.R0);
    }

    @ParameterizedTest
    @EnumSource(QuarterTurn.class)
    void turnsOfCornersFacesAndPlusAgree(QuarterTurn turn) {
        RandomSpace random = new RandomSpace(17 + turn.degrees());
        for (int i = 0; i < 500; i++) {
            Size size = random.size();
            Box box = random.box();
            Point a = turn.apply(box.low(), size);
            Point b = turn.apply(box.high(), size);
            assertThat(turn.apply(box, size)).isEqualTo(Box.between(a, a).hull(Box.between(b, b)));
            assertThat(turn.apply(size.box(), size)).isEqualTo(turn.apply(size).box());
            for (Face face : Face.values()) {
                assertThat(turn.apply(box.face(face), size))
                        .isEqualTo(turn.apply(box, size).face(turn.apply(face)));
            }
            QuarterTurn more = random.turn();
            assertThat(turn.plus(more).apply(box, size)).isEqualTo(more.apply(turn.apply(box, size), turn.apply(size)));
        }
    }

    @Test
    void aPosePutsTheTurnedSizeAtItsPlace() {
        Size size = Size.ofMm(600, 800, 100);
        Pose pose = new Pose(Point.ofMm(1000, 2000, 50), QuarterTurn.R90);

        assertThat(pose.outline(size)).isEqualTo(Box.ofMm(1000, 2000, 50, 1800, 2600, 150));
        assertThat(pose.apply(Box.ofMm(0, 0, 0, 100, 200, 10), size))
                .isEqualTo(Box.ofMm(1600, 2000, 50, 1800, 2100, 60));
        assertThat(pose.apply(Point.ofMm(0, 0, 0), size)).isEqualTo(Point.ofMm(1800, 2000, 50));
        assertThat(pose.apply(Face.FRONT)).isEqualTo(Face.LEFT);
        assertThat(pose.moved(Point.ofMm(1, 2, 3))).isEqualTo(new Pose(Point.ofMm(1001, 2002, 53), QuarterTurn.R90));
        assertThat(Pose.at(Point.ORIGIN)).isEqualTo(new Pose(Point.ORIGIN, QuarterTurn.R0));
    }

    @Test
    void refusesATurnThatIsNoQuarter() {
        assertThatThrownBy(() -> QuarterTurn.ofDegrees(45)).hasMessage("The turn of 45° must be 0, 90, 180 or 270.");
        assertThat(QuarterTurn.ofDegrees(270)).isEqualTo(QuarterTurn.R270);
    }

    @ParameterizedTest
    @EnumSource(Face.class)
    void oppositeFacesLookAgainstEachOther(Face face) {
        assertThat(face.opposite().axis()).isEqualTo(face.axis());
        assertThat(face.opposite().sign()).isEqualTo(-face.sign());
        assertThat(face.opposite().opposite()).isEqualTo(face);
        assertThat(face.upright()).isEqualTo(face != Face.TOP && face != Face.BOTTOM);
    }
}
