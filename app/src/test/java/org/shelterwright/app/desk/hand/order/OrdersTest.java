package org.shelterwright.app.desk.hand.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.hand.HandPost;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;

class OrdersTest {
    private final Layout start = HandPost.layout();
    private final Session session = new Session(Checker.standard(), start);
    private final Commands commands = new Commands();
    private final Orders orders = new Orders(session);

    OrdersTest() {
        commands.addAll(orders.commands());
    }

    @Test
    void keys_are_not_given_twice() {
        List<String> keys =
                commands.all().stream().flatMap(one -> one.keys().stream()).toList();

        assertThat(keys).doesNotHaveDuplicates();
    }

    @Test
    void without_a_selection_every_order_says_so() {
        assertThat(commands.all())
                .filteredOn(one -> one.id().startsWith("edit."))
                .allSatisfy(one -> assertThat(one.obstacle().get())
                        .as(one.id())
                        .contains("Nothing is selected. Select a unit first."));
    }

    @Test
    void a_nudge_moves_by_one_step_ten_or_a_tenth() {
        select("rack-1");

        run("edit.move-front");
        assertThat(way("rack-1")).isEqualTo(Point.ofMm(10, 0, 0));
        run("edit.move-left-far");
        assertThat(way("rack-1")).isEqualTo(Point.ofMm(10, 100, 0));
        orders.step().set(25_400);
        run("edit.move-rear-fine");

        assertThat(way("rack-1")).isEqualTo(new Point(7_460, 100_000, 0));
        assertThat(session.now().history().undoNames()).containsOnly("Move Telemetry rack 1");
    }

    @Test
    void a_unit_moves_only_along_what_it_is_mounted_on() {
        select("heater");

        assertThat(obstacle("edit.move-left"))
                .isEqualTo("Heater is mounted on the right wall and moves along it only.");
        run("edit.move-top");

        assertThat(way("heater")).isEqualTo(Point.ofMm(0, 0, 10));
    }

    @Test
    void a_turn_is_about_the_middle_and_four_turns_are_none() {
        select("rack-1");
        Box before = outline("rack-1");

        run("edit.turn-left");
        assertThat(outline("rack-1").centre()).isEqualTo(before.centre());
        assertThat(placement("rack-1").station().pose().yaw()).isEqualTo(QuarterTurn.R180);
        run("edit.turn-right");

        assertThat(session.now().layout()).isEqualTo(start);
    }

    @Test
    void units_that_are_turned_together_keep_their_places_to_each_other() {
        select("rack-1", "chart-table", "winch-crate");
        Box rack = outline("rack-1");
        Box table = outline("chart-table");

        run("edit.turn-left");

        Point before = table.low().minus(rack.low());
        Box turnedRack = outline("rack-1");
        Box turnedTable = outline("chart-table");
        assertThat(turnedTable.y0() - turnedRack.y0()).isEqualTo(before.x());
        assertThat(turnedRack.x1() - turnedTable.x1()).isEqualTo(before.y());
        run("edit.turn-about");
        run("edit.turn-left");
        assertThat(session.now().layout()).isEqualTo(start);
    }

    @Test
    void what_hangs_on_a_wall_is_not_turned_but_mounted_on_another_wall() {
        select("heater");

        assertThat(obstacle("edit.turn-left"))
                .isEqualTo("Heater hangs on a wall, and turned it would leave it. Mount it on another wall instead.");
        run("edit.mount-left-wall");

        assertThat(outline("heater").y1()).isEqualTo(start.body().inside().y());
        assertThat(placement("heater").station().surface()).isEqualTo(Surface.WALL);
        assertThat(session.now().history().undoNames()).containsExactly("Mount Heater on the left wall");
    }

    @Test
    void mounting_on_another_unit_puts_it_on_a_support_there() {
        select("screen-1", "desk");

        run("edit.mount-on");

        Place place = placement("screen-1").station();
        assertThat(place.host()).isEqualTo("desk");
        assertThat(outline("desk").gap(outline("screen-1"), Axis.X)).isNegative();
        assertThat(outline("desk").gap(outline("screen-1"), Axis.Y)).isNegative();
        assertThat(outline("screen-1").z0()).isEqualTo(740_000);
    }

    @Test
    void what_has_no_support_carries_nothing() {
        select("screen-1", "heater");

        assertThat(obstacle("edit.mount-on")).isEqualTo("Heater has no support on its top.");
    }

    @Test
    void a_pin_holds_against_moving_and_is_taken_out_by_the_same_order() {
        select("rack-1");

        run("edit.pin-y");
        assertThat(obstacle("edit.move-left")).isEqualTo("Telemetry rack 1 is pinned along y. Unpin it first.");
        run("edit.pin");
        assertThat(placement("rack-1").pin()).isEqualTo(Pin.ALL);
        run("edit.pin");

        assertThat(placement("rack-1").pin()).isEqualTo(Pin.NONE);
        assertThat(session.now().history().undoNames())
                .containsExactly("Unpin Telemetry rack 1", "Pin Telemetry rack 1", "Pin Telemetry rack 1 along y");
    }

    @Test
    void lining_up_moves_all_to_the_face_of_the_one_chosen_last() {
        select("rack-1", "chart-table", "winch-crate");

        run("edit.align-left-sides");

        int line = outline("winch-crate").y1();
        assertThat(List.of(outline("rack-1").y1(), outline("chart-table").y1())).containsOnly(line);
        assertThat(way("winch-crate")).isEqualTo(Point.ORIGIN);
        assertThat(obstacle("edit.align-left-sides")).isEqualTo("Nothing would change.");
    }

    @Test
    void spacing_evenly_leaves_gaps_that_differ_by_a_micrometre_at_most() {
        select("chart-table", "rack-1", "wader-frame", "winch-crate", "battery-box");

        run("edit.space-x");

        List<Box> boxes = List.of("chart-table", "rack-1", "wader-frame", "winch-crate", "battery-box").stream()
                .map(this::outline)
                .sorted((a, b) -> Integer.compare(a.x0(), b.x0()))
                .toList();
        int gap = boxes.get(1).x0() - boxes.get(0).x1();
        for (int i = 1; i < boxes.size(); i++) {
            assertThat(boxes.get(i).gap(boxes.get(i - 1), Axis.X)).isBetween(gap - 1, gap + 1);
        }
        assertThat(way("chart-table")).isEqualTo(Point.ORIGIN);
        assertThat(way("battery-box")).isEqualTo(Point.ORIGIN);
    }

    @Test
    void a_duplicate_gets_the_next_number_and_a_free_place() {
        select("folding-chair");

        run("edit.duplicate");

        Placement copy = placement("folding-chair-2");
        Box box = outline("folding-chair-2");
        assertThat(copy.station().pose().yaw())
                .isEqualTo(placement("folding-chair").station().pose().yaw());
        assertThat(session.now().scene().units())
                .filteredOn(unit -> !unit.id().equals("folding-chair-2"))
                .allSatisfy(
                        unit -> assertThat(unit.solids(Situation.ON_STATION)).noneMatch(solid -> solid.overlaps(box)));
        assertThat(session.now().history().undoNames()).containsExactly("Duplicate Folding chair");
    }

    @Test
    void taking_out_leaves_the_unit_to_be_placed_and_removing_strikes_it_from_the_brief() {
        select("rack-1");

        run("edit.take-out");
        assertThat(session.now().scene().toPlace()).extracting("id").containsExactly("rack-1");
        assertThat(obstacle("edit.take-out")).isEqualTo("Telemetry rack 1 is not placed yet.");
        run("edit.place");
        assertThat(session.now().scene().toPlace()).isEmpty();
        run("edit.remove");

        assertThat(session.now().layout().brief().units()).extracting("id").doesNotContain("rack-1");
        assertThat(session.selection().units().get()).isEmpty();
    }

    @Test
    void swapping_needs_two_units() {
        select("rack-1");
        assertThat(obstacle("edit.swap")).isEqualTo("Select at least 2 units.");
        select("rack-1", "rack-2");

        run("edit.swap");

        assertThat(placement("rack-1").station())
                .isEqualTo(start.placements().get("rack-2").station());
        assertThat(session.now().history().undoNames()).containsExactly("Swap Telemetry rack 1 and Telemetry rack 2");
    }

    @Test
    void a_unit_can_be_stowed_elsewhere_on_the_road_and_left_in_place_again() {
        select("rack-1");

        run("edit.stow");
        session.situation().set(Situation.ON_THE_ROAD);
        run("edit.move-front");
        assertThat(way("rack-1")).isEqualTo(Point.ORIGIN);
        assertThat(placement("rack-1").road()).isNotNull();
        run("edit.unstow");

        assertThat(session.now().layout()).isEqualTo(start);
    }

    @Test
    void all_units_of_the_same_item_can_be_selected() {
        select("rack-1");

        run("select.same-item");

        assertThat(session.selection().units().get()).containsExactly("rack-1", "rack-2");
    }

    private void select(String... units) {
        session.selection().set(List.of(units));
    }

    private void run(String id) {
        assertThat(commands.run(id)).as(id).isEmpty();
    }

    private String obstacle(String id) {
        Command command = commands.byId(id).orElseThrow();
        return command.obstacle().get().orElse("none");
    }

    private Placement placement(String unit) {
        return session.now().layout().placements().get(unit);
    }

    private Box outline(String unit) {
        return session.now().scene().unit(unit).orElseThrow().outline(Situation.ON_STATION);
    }

    private Point way(String unit) {
        return placement(unit)
                .station()
                .pose()
                .at()
                .minus(start.placements().get(unit).station().pose().at());
    }
}
