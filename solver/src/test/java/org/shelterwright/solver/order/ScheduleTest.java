package org.shelterwright.solver.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.BoltDownOrder;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.samples.Samples;

class ScheduleTest {
    private final Layout layout =
            LayoutFiles.read(Samples.layout("water-lab").orElseThrow()).layout();

    private BoltDownPlan plan(int fitters) {
        BoltDownOrder order = layout.boltDown();
        assertThat(order).isNotNull();
        return BoltDownPlan.of(Checker.standard().scene(layout.withBoltDown(order.withFitters(fitters))))
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5})
    void nobodyIsAtTwoPlacesAndEveryStepIsDone(int fitters) {
        BoltDownPlan plan = plan(fitters);

        Schedule schedule = Schedule.of(plan);

        assertThat(schedule.shifts()).hasSize((int) (2 * plan.steps().size()
                + plan.steps().stream().filter(step -> step.minutesBench() > 0).count()));
        for (int i = 0; i < schedule.shifts().size(); i++) {
            for (int j = i + 1; j < schedule.shifts().size(); j++) {
                Shift a = schedule.shifts().get(i);
                Shift b = schedule.shifts().get(j);
                boolean together = a.fromMinutes() < b.toMinutes() - 1e-9 && b.fromMinutes() < a.toMinutes() - 1e-9;
                if (together) {
                    assertThat(a.fitters()).as(a + " and " + b).doesNotContainAnyElementsOf(b.fitters());
                    assertThat(a.bringingIn() && b.bringingIn()).isFalse();
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void unitsAreBroughtInInTheirOrder(int fitters) {
        List<Shift> in = Schedule.of(plan(fitters)).shifts().stream()
                .filter(Shift::bringingIn)
                .toList();

        for (int i = 1; i < in.size(); i++) {
            assertThat(in.get(i).step()).isEqualTo(in.get(i - 1).step() + 1);
            assertThat(in.get(i).fromMinutes())
                    .isGreaterThanOrEqualTo(in.get(i - 1).toMinutes());
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void aRackIsFilledOnTheBenchBeforeItComesIn(int fitters) {
        BoltDownPlan plan = plan(fitters);
        List<Shift> shifts = Schedule.of(plan).shifts();

        List<Shift> bench = shifts.stream().filter(Shift::onBench).toList();

        assertThat(bench).isNotEmpty().allSatisfy(one -> {
            assertThat(one.fitters()).hasSize(1);
            assertThat(one.toMinutes() - one.fromMinutes())
                    .isCloseTo(plan.steps().get(one.step() - 1).minutesBench(), within(1e-9));
            assertThat(shifts.stream()
                            .filter(in -> in.bringingIn() && in.step() == one.step())
                            .map(Shift::fromMinutes))
                    .singleElement()
                    .satisfies(from -> assertThat(from).isGreaterThanOrEqualTo(one.toMinutes() - 1e-9));
        });
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void theCriticalChainRunsFromTheBeginningToTheEnd(int fitters) {
        Schedule schedule = Schedule.of(plan(fitters));
        List<Shift> critical =
                schedule.shifts().stream().filter(Shift::critical).toList();

        assertThat(critical.stream().mapToDouble(Shift::fromMinutes).min().orElseThrow())
                .isCloseTo(0, within(1e-9));
        assertThat(critical.stream().mapToDouble(Shift::toMinutes).max().orElseThrow())
                .isCloseTo(schedule.lengthMinutes(), within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3})
    void moreFittersNeverTakeLonger(int fitters) {
        double alone = Schedule.of(plan(1)).lengthMinutes();
        double sum = plan(1).steps().stream()
                .mapToDouble(step -> step.minutes() + step.minutesBench())
                .sum();

        assertThat(alone).isLessThanOrEqualTo(sum + 1e-6);
        assertThat(Schedule.of(plan(fitters)).lengthMinutes()).isLessThanOrEqualTo(alone + 1e-6);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 5})
    void twoPeopleAreNeverInTheSameNarrowZone(int fitters) {
        BoltDownPlan plan = plan(fitters);
        List<Shift> shifts = Schedule.of(plan).shifts();
        int sideBySide = 0;
        for (int i = 0; i < shifts.size(); i++) {
            for (int j = i + 1; j < shifts.size(); j++) {
                Shift a = shifts.get(i);
                Shift b = shifts.get(j);
                boolean together = a.fromMinutes() < b.toMinutes() - 1e-9 && b.fromMinutes() < a.toMinutes() - 1e-9;
                if (a.onBench() || b.onBench()) {
                    continue;
                }
                if (together && !a.bringingIn() && !b.bringingIn()) {
                    sideBySide++;
                    assertThat(room(plan, a).overlaps(room(plan, b)))
                            .as(a + " and " + b)
                            .isFalse();
                } else if (together) {
                    Shift in = a.bringingIn() ? a : b;
                    Shift at = a.bringingIn() ? b : a;
                    assertThat(plan.steps().get(in.step() - 1).passage().swept().stream()
                                    .flatMap(List::stream)
                                    .noneMatch(room(plan, at)::overlaps))
                            .as(in + " past " + at)
                            .isTrue();
                }
            }
        }
        assertThat(sideBySide).isPositive();
    }

    /** The unit and 350 mm about it, in which somebody works. */
    private static Box room(BoltDownPlan plan, Shift shift) {
        return plan.steps()
                .get(shift.step() - 1)
                .unit()
                .outline(Situation.ON_STATION)
                .grown(350_000, 350_000, 0);
    }
}
