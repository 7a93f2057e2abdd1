package org.shelterwright.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.TestIssue;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.MovablePart;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

class DoorSwingTest {
    private static final Body BODY = TestIssue.riverPost().scene().body();
    private static final Box AREA = Box.ofMm(0, 480, 0, 0, 1330, 1850);

    private static DoorSwing of(Box swing, Face hinge) {
        return DoorSwing.of(BODY, new Opening("door", Opening.Kind.DOOR, Face.REAR, AREA, true, swing, hinge))
                .orElseThrow();
    }

    @Test
    void anOutwardLeafHangsWhereTheDataSay() {
        DoorSwing right = of(null, Face.RIGHT);
        DoorSwing left = of(null, Face.LEFT);

        assertThat(right.hinge()).isEqualTo(Point.ofMm(-60, 480, 0));
        assertThat(right.arc().get(0)).isEqualTo(Point.ofMm(-60, 1330, 0));
        assertThat(right.end()).isEqualTo(Point.ofMm(-910, 480, 0));
        assertThat(left.hinge()).isEqualTo(Point.ofMm(-60, 1330, 0));
        assertThat(left.end()).isEqualTo(Point.ofMm(-910, 1330, 0));
        assertThat(of(null, null)).isEqualTo(right);
    }

    @Test
    void anInwardLeafSwingsInsideIfItsHingeIsKnown() {
        Box swing = Box.ofMm(0, 480, 0, 850, 1330, 1850);
        DoorSwing left = of(swing, Face.LEFT);

        assertThat(left.hinge()).isEqualTo(Point.ofMm(0, 1330, 0));
        assertThat(left.end()).isEqualTo(Point.ofMm(850, 1330, 0));
        assertThat(DoorSwing.of(BODY, new Opening("door", Opening.Kind.DOOR, Face.REAR, AREA, true, swing, null)))
                .isEmpty();
        assertThat(DoorSwing.of(BODY, new Opening("flap", Opening.Kind.HATCH, Face.REAR, AREA, true, null, Face.TOP)))
                .isEmpty();
    }

    @Test
    void theDoorOfAUnitTurnsWithIt() {
        var unit = TestIssue.riverPost().scene().units().get(0);
        var size = unit.item().size();
        Box sweep = new Box(size.x(), 0, 0, size.x() + size.y(), size.y(), size.z());

        DoorSwing leaf = DoorSwing.of(unit, new MovablePart("door", MovablePart.Kind.DOOR, sweep, "latch", Face.LEFT))
                .orElseThrow();

        var pose = unit.pose(Situation.ON_STATION);
        assertThat(leaf.hinge())
                .isEqualTo(pose.apply(new Point(size.x(), size.y(), 0), size).with(Axis.Z, 0));
        assertThat(leaf.end())
                .isEqualTo(pose.apply(new Point(size.x() + size.y(), size.y(), 0), size)
                        .with(Axis.Z, 0));
        for (MovablePart flat : List.of(
                new MovablePart("door", MovablePart.Kind.DOOR, sweep, "latch"),
                new MovablePart("lid", MovablePart.Kind.LID, sweep, "latch", Face.TOP))) {
            assertThat(DoorSwing.of(unit, flat)).isEmpty();
        }
    }
}
