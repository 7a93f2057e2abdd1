package org.shelterwright.app.desk.bolt;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.desk.WorkAtOnce;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.edit.SetBoltDown;
import org.shelterwright.layouts.edit.TakeOutUnit;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.BoltDownOrder;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.samples.Samples;

class BoltDeskTest {
    private static final Checker CHECKER = Checker.standard();

    private final Layout post =
            LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout();
    private final Session session = new Session(CHECKER, post);
    private final WorkAtOnce work = new WorkAtOnce();
    private final BoltDesk desk = new BoltDesk(session, work);

    @Test
    void stepsAreWorkedOutOnlyWhileThePageIsLookedAt() {
        assertThat(desk.stand().get()).isEqualTo(BoltStand.NONE);

        desk.show(true);

        BoltDownPlan plan = desk.stand().get().plan();
        assertThat(plan).isNotNull();
        assertThat(plan.steps()).hasSameSizeAs(post.placements().keySet());
        assertThat(desk.stand().get().schedule()).isNotNull();
        assertThat(desk.step()).map(BoltDownStep::number).contains(1);
        assertThat(desk.along()).as("the first unit is outside").isZero();
    }

    @Test
    void theWorkStandsBetweenTheEmptyBodyAndTheFullOne() {
        desk.show(true);
        int steps = desk.stand().get().steps();

        desk.go(3);
        assertThat(desk.number()).isEqualTo(3);
        assertThat(desk.along()).isEqualTo(1);
        desk.at().set(3.25);
        assertThat(desk.number()).isEqualTo(4);
        assertThat(desk.along()).isEqualTo(0.25);
        desk.go(steps + 5);
        assertThat(desk.number()).isEqualTo(steps);
        desk.go(-2);
        assertThat(desk.number()).isEqualTo(1);
    }

    @Test
    void anOrderIsFoundAndIsOneStepThatCanBeUndone() {
        session.apply(new SetBoltDown(null));
        desk.show(true);
        assertThat(desk.stand().get().steps()).isZero();

        desk.find(2);

        assertThat(desk.stand().get().found().complete()).isTrue();
        assertThat(session.now().layout().boltDown().fitters()).isEqualTo(2);
        assertThat(desk.stand().get().plan().steps())
                .hasSameSizeAs(post.placements().keySet())
                .allSatisfy(step -> assertThat(step.passage().free()).isTrue());
        assertThat(session.now().history().undoNames().get(0)).isEqualTo("Set the bolt-down order");
        session.undo();
        assertThat(desk.stand().get().plan()).isNull();
    }

    @Test
    void whatIsNotPlacedAnyMoreHasNoStep() {
        desk.show(true);
        int steps = desk.stand().get().steps();

        session.apply(new TakeOutUnit("extinguisher"));

        assertThat(desk.stand().get().steps()).isEqualTo(steps - 1);
    }

    @Test
    void aStepIsMovedIfEveryUnitKeepsItsWayInAndElseTheReasonIsTold() {
        desk.show(true);
        List<String> before = order();
        List<String> refusals = new ArrayList<>();
        int moved = 0;
        for (int number = 1; number < Math.min(7, before.size()); number++) {
            desk.move(number, 1);
            if (desk.stand().get().refusal().isEmpty()) {
                moved++;
                List<String> expected = new ArrayList<>(before);
                Collections.swap(expected, number - 1, number);
                assertThat(order()).isEqualTo(expected);
                assertThat(desk.number()).isEqualTo(number + 1);
                session.undo();
            } else {
                refusals.add(desk.stand().get().refusal());
                assertThat(order()).isEqualTo(before);
            }
        }

        assertThat(moved).isPositive();
        assertThat(refusals)
                .allSatisfy(reason -> assertThat(reason)
                        .matches(
                                ".+ (has no way in past .+|is mounted on or under .+, which is not in yet|(was|were) asked to be in"
                                        + " before .+)\\."));
    }

    @Test
    void whatWasAskedToBeInBeforeIsKept() {
        BoltDownOrder order = post.boltDown();
        String first = order.units().get(0);
        String then = order.units().get(1);
        session.apply(new SetBoltDown(
                order.withBefore(List.of(new BoltDownOrder.Before(first, then, "it is in the way of the drill")))));
        desk.show(true);

        desk.move(1, 1);

        String one = session.now().scene().unit(first).orElseThrow().name();
        String other = session.now().scene().unit(then).orElseThrow().name();
        assertThat(desk.stand().get().refusal()).isEqualTo(one + " was asked to be in before " + other + ".");
    }

    @Test
    void aUnitComesFromOutsideTheBodyToItsPlaceWithoutAJump() {
        desk.show(true);
        Box inside = session.now().scene().body().inside().box();
        for (BoltDownStep step : desk.stand().get().plan().steps()) {
            Course course = new Course(step.passage());
            Pose last = step.unit().pose(Situation.ON_STATION);
            assertThat(course.pose(1)).as(step.unit().id()).isEqualTo(last);
            if (!step.passage().free() || step.passage().opening() == null) {
                continue;
            }
            Box outside = course.pose(0).outline(step.unit().item().size());
            assertThat(outside.overlaps(inside))
                    .as(step.unit().id() + " begins outside")
                    .isFalse();
            Pose before = course.pose(0);
            for (int i = 1; i <= 200; i++) {
                Pose now = course.pose(i / 200.0);
                if (now.yaw() == before.yaw()) {
                    long way = Math.abs((long) now.at().x() - before.at().x())
                            + Math.abs((long) now.at().y() - before.at().y())
                            + Math.abs((long) now.at().z() - before.at().z());
                    assertThat(way).as(step.unit().id() + " at " + i).isLessThanOrEqualTo(course.length() / 200 + 10);
                }
                before = now;
            }
        }
    }

    @Test
    void stepsAreSaidInWords() {
        desk.show(true);
        List<StepRow> rows = StepRow.of(desk.stand().get().plan(), 2);

        assertThat(rows)
                .extracting(StepRow::state)
                .startsWith(StepRow.State.DONE, StepRow.State.NOW, StepRow.State.TO_COME);
        assertThat(rows.get(1).spoken())
                .isEqualTo("Step 2, " + rows.get(1).name() + ", " + rows.get(1).time() + ", now");
        assertThat(StepRow.time(34.4)).isEqualTo("34 min");
        assertThat(StepRow.time(94)).isEqualTo("1 h 34");
        assertThat(StepRow.time(120)).isEqualTo("2 h");
    }

    private List<String> order() {
        return session.now().layout().boltDown().units();
    }
}
