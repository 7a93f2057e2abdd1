package org.shelterwright.app.desk.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import javafx.geometry.Point3D;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.edit.PinUnit;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.scene.Scene;

class GripTest {
    private static final Catching NOTHING = new Catching(0, 0);

    private final Layout start = HandPost.layout();
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

    @Test
    void all_fixings_catch_on_holes_and_the_words_say_which() {
        Grip grip = Grip.take(session, Set.of("rack-1"), down("rack-1", 0, 0), new Catching(30, 0))
                .orElseThrow();

        grip.to(down("rack-1", 53, 8));

        assertThat(way("rack-1")).isEqualTo(Point.ofMm(50, 0, 0));
        assertThat(grip.catches()).hasSize(1);
        assertThat(grip.catches().get(0).kind()).isEqualTo(Catch.Kind.HOLE);
        assertThat(grip.catches().get(0).words()).matches("[a-z ]+\\d*.*, hole \\d+");
    }

    @Test
    void nothing_catches_while_moving_freely() {
        Grip grip = Grip.take(session, Set.of("rack-1"), down("rack-1", 0, 0), new Catching(30, 0))
                .orElseThrow();
        grip.to(down("rack-1", 53, 8));

        grip.freely(true);

        assertThat(way("rack-1")).isEqualTo(Point.ofMm(53, 8, 0));
        assertThat(grip.catches()).isEmpty();
    }

    @Test
    void movement_can_be_kept_to_one_axis() {
        Grip grip = grip(Set.of("rack-1"), "rack-1");
        grip.to(down("rack-1", 53, 8));

        grip.only(Axis.X);

        assertThat(way("rack-1")).isEqualTo(Point.ofMm(53, 0, 0));
        assertThat(grip.clearances()).extracting(Clearance::axis).containsOnly(Axis.X);
    }

    @Test
    void a_typed_number_replaces_a_distance_to_a_neighbour() {
        Grip grip = grip(Set.of("chart-table"), "chart-table");
        grip.to(down("chart-table", 30, 0));
        Clearance wall = grip.clearances().stream()
                .filter(one -> one.name().equals("the rear wall"))
                .findFirst()
                .orElseThrow();
        assertThat(wall.words()).isEqualTo("80 to the rear wall");

        grip.set(wall, 25_400);
        grip.to(down("chart-table", 90, 10));

        assertThat(session.now()
                        .layout()
                        .placements()
                        .get("chart-table")
                        .station()
                        .pose()
                        .at())
                .isEqualTo(new Point(25_400, 10_000, 0));
    }

    @Test
    void a_pinned_axis_holds() {
        session.apply(new PinUnit("rack-1", Pin.NONE.with(Axis.Y, true)));
        Grip grip = grip(Set.of("rack-1"), "rack-1");

        grip.to(down("rack-1", 30, 20));

        assertThat(way("rack-1")).isEqualTo(Point.ofMm(30, 0, 0));
    }

    @Test
    void a_unit_on_another_stays_on_it() {
        Grip grip = grip(Set.of("screen-1"), "screen-1");

        grip.to(down("screen-1", 5000, 0));

        Scene scene = session.now().scene();
        Box top = scene.unit("gauge-locker").orElseThrow().outline(Situation.ON_STATION);
        assertThat(scene.unit("screen-1")
                        .orElseThrow()
                        .outline(Situation.ON_STATION)
                        .x0())
                .isLessThan(top.x1());
    }

    @Test
    void on_the_road_a_loose_unit_gets_another_place_but_a_bolted_one_moves_in_both() {
        session.situation().set(Situation.ON_THE_ROAD);
        Grip rack = grip(Set.of("rack-1"), "rack-1");
        rack.to(down("rack-1", 30, 20));
        rack.drop();
        assertThat(way("rack-1")).isEqualTo(Point.ofMm(30, 20, 0));

        Box chair = session.now().scene().unit("folding-chair").orElseThrow().outline(Situation.ON_THE_ROAD);
        Grip loose = Grip.take(session, Set.of("folding-chair"), down(chair, 0, 0), NOTHING)
                .orElseThrow();
        loose.to(down(chair, 10, 0));

        assertThat(way("folding-chair")).isEqualTo(Point.ORIGIN);
        assertThat(session.now().scene().unit("folding-chair").orElseThrow().outline(Situation.ON_THE_ROAD))
                .isEqualTo(chair.moved(10_000, 0, 0));
    }

    private Grip grip(Set<String> units, String pressed) {
        return Grip.take(session, units, down(pressed, 0, 0), NOTHING).orElseThrow();
    }

    private Ray down(String unit, double dx, double dy) {
        Box box = Checker.standard().scene(start).unit(unit).orElseThrow().outline(Situation.ON_STATION);
        return down(box, dx, dy);
    }

    private static Ray down(Box box, double dx, double dy) {
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
