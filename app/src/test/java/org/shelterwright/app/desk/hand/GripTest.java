package org.shelterwright.app.desk.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import javafx.geometry.Point3D;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.samples.Samples;

class GripTest {
    private static final Catching NOTHING = new Catching(0, 0);

    private final Layout start =
            LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout();
    private final Session session = new Session(Checker.standard(), start);

    @Test
    void a_unit_on_the_floor_follows_the_pointer_along_the_floor() {
        Grip grip = grip(Set.of("rack-1"), "rack-1");

        grip.to(down("rack-1", 100, -40));

        assertThat(way("rack-1")).isEqualTo(Point.ofMm(100, -40, 0));
        assertThat(session.now().tryingOut()).isTrue();
    }

    @Test
    void a_drag_is_one_step_with_the_name_of_the_unit() {
        Grip grip = grip(Set.of("rack-1"), "rack-1");
        grip.to(down("rack-1", 50, 0));
        grip.to(down("rack-1", 100, 0));

        grip.drop();

        assertThat(session.now().history().undoNames())
                .containsExactly("Drag "
                        + session.now().scene().unit("rack-1").orElseThrow().name());
        session.undo();
        assertThat(session.now().layout()).isEqualTo(start);
    }

    @Test
    void a_cancelled_drag_leaves_no_trace() {
        Grip grip = grip(Set.of("rack-1"), "rack-1");
        grip.to(down("rack-1", 50, 0));

        grip.cancel();

        assertThat(session.now().layout()).isEqualTo(start);
        assertThat(session.now().history().canUndo()).isFalse();
    }

    @Test
    void several_units_keep_their_places_to_each_other() {
        Grip grip = grip(Set.of("rack-1", "rack-2"), "rack-2");

        grip.to(down("rack-2", 30, 20));

        assertThat(way("rack-1")).isEqualTo(Point.ofMm(30, 20, 0));
        assertThat(way("rack-2")).isEqualTo(Point.ofMm(30, 20, 0));
    }

    @Test
    void nothing_is_taken_hold_of_if_no_unit_is_placed() {
        assertThat(Grip.take(session, Set.of("no-such-unit"), down("rack-1", 0, 0), NOTHING))
                .isEmpty();
    }

    private Grip grip(Set<String> units, String pressed) {
        return Grip.take(session, units, down(pressed, 0, 0), NOTHING).orElseThrow();
    }

    private Ray down(String unit, double dx, double dy) {
        Box box = Checker.standard().scene(start).unit(unit).orElseThrow().outline(Situation.ON_STATION);
        Point at = box.centre();
        return new Ray(new Point3D(at.x() / 1e3 + dx, at.y() / 1e3 + dy, 10_000), new Point3D(0, 0, -1));
    }

    private Point way(String unit) {
        return session.now()
                .layout()
                .placements()
                .get(unit)
                .station()
                .pose()
                .at()
                .minus(start.placements().get(unit).station().pose().at());
    }
}
