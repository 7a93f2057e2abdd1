package org.shelterwright.layouts.asbuilt;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.asbuilt.AsBuiltRecord.Check;
import org.shelterwright.layouts.asbuilt.AsBuiltRecord.Step;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.layouts.boltdown.PlanKey;
import org.shelterwright.layouts.boltdown.StepCheck;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.samples.Samples;

class AsBuiltTest {
    private final Layout layout =
            LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout();
    private final BoltDownPlan plan =
            BoltDownPlan.of(Checker.standard().scene(layout)).orElseThrow();

    /** A record in which all is as it should be, but for one step that a test changes. */
    private AsBuiltRecord record(String unit, UnaryOperator<Step> change) {
        List<Step> steps = new ArrayList<>();
        for (BoltDownStep step : plan.steps()) {
            List<Check> checks = step.checks().stream()
                    .map(check -> new Check(check.id(), true, check.expected()))
                    .toList();
            Step done = new Step(
                    step.unit().id(),
                    PlanKey.joints(step),
                    "R. Fitter",
                    "2026-01-15T10:00",
                    "No. 7, until 2026-06",
                    "S. Second",
                    null,
                    checks);
            steps.add(step.unit().id().equals(unit) ? change.apply(done) : done);
        }
        return new AsBuiltRecord("river-post", PlanKey.plan(plan), "2026-01-15T17:00", steps);
    }

    private static Step measured(Step step, String check, Double value) {
        List<Check> checks = step.checks().stream()
                .map(one -> one.check().equals(check) ? new Check(check, true, value) : one)
                .toList();
        return new Step(
                step.unit(),
                step.joints(),
                step.signedBy(),
                step.signedAt(),
                step.wrench(),
                step.releasedBy(),
                step.note(),
                checks);
    }

    @Test
    void isCompleteWhenAllIsSignedAndAsItShouldBe() {
        AsBuilt built = AsBuilt.of(plan, record("", step -> step), layout);

        assertThat(built.open()).isEmpty();
        assertThat(built.voided()).isEmpty();
        assertThat(built.complete()).isTrue();
        assertThat(built.wrenches()).containsExactly("No. 7, until 2026-06");
        assertThat(built.layout()).isEqualTo(layout);
    }

    @Test
    void tellsADeviationAndMovesTheUnit() {
        AsBuilt built = AsBuilt.of(plan, record("rack-1", step -> measured(step, "rack-1/x", 1854.5)), layout);

        assertThat(built.complete()).isFalse();
        assertThat(built.deviations().stream().filter(one -> !one.within()).map(AsBuilt::sentence))
                .containsExactly(
                        "Step 2, Telemetry rack 1: 1850 from the rear wall, measured 1854.5 mm, 4.5 off; allowed is 2."
                                + " Set it right, or have it released.");
        Point before = layout.placements().get("rack-1").station().pose().at();
        Point after = built.layout().placements().get("rack-1").station().pose().at();
        assertThat(after.minus(before)).isEqualTo(new Point(4500, 0, 0));
    }

    @Test
    void namesWhatIsNotSignedOrMeasured() {
        AsBuilt built = AsBuilt.of(
                plan,
                record(
                        "rack-1",
                        step -> measured(
                                new Step(step.unit(), step.joints(), null, null, null, null, null, step.checks()),
                                "rack-1/torque",
                                null)),
                layout);

        assertThat(built.open())
                .containsExactly(
                        "Step 2, Telemetry rack 1 is not signed.",
                        "Step 2, Telemetry rack 1: the torque wrench is not named.",
                        "Step 2, Telemetry rack 1: no figure for: All 6 M10 at 13 N·m.");
    }

    @Test
    void aTorqueIsVoidOnceTheJointWasChanged() {
        AsBuilt built = AsBuilt.of(
                plan,
                record(
                        "rack-1",
                        step -> new Step(
                                step.unit(),
                                "other",
                                step.signedBy(),
                                step.signedAt(),
                                null,
                                null,
                                null,
                                step.checks())),
                layout);

        assertThat(built.voided())
                .containsExactly(
                        "Step 2, Telemetry rack 1: place or fixings were changed after the record, so its measures and"
                                + " torques are void. Measure and tighten again.");
    }

    @Test
    void holdPointsNeedASecondPerson() {
        String held = plan.steps().stream()
                .filter(step -> step.hold() != null)
                .findFirst()
                .orElseThrow()
                .unit()
                .id();
        AsBuilt built = AsBuilt.of(
                plan,
                record(
                        held,
                        step -> new Step(
                                step.unit(),
                                step.joints(),
                                step.signedBy(),
                                step.signedAt(),
                                step.wrench(),
                                null,
                                null,
                                step.checks())),
                layout);

        assertThat(built.open()).singleElement().asString().endsWith("its hold point is not released.");
        AsBuilt alone = AsBuilt.of(
                plan,
                record(
                        held,
                        step -> new Step(
                                step.unit(),
                                step.joints(),
                                step.signedBy(),
                                step.signedAt(),
                                step.wrench(),
                                step.signedBy(),
                                null,
                                step.checks())),
                layout);
        assertThat(alone.open())
                .singleElement()
                .asString()
                .endsWith(
                        ": its hold point was released by R. Fitter, who signed it. A second person must release it.");
        assertThat(alone.complete()).isFalse();
    }

    @Test
    void everyStepHasChecksForPlaceAndTorque() {
        for (BoltDownStep step : plan.steps()) {
            assertThat(step.checks().stream().filter(check -> check.kind() == StepCheck.Kind.POSITION))
                    .as(step.unit().id())
                    .hasSizeBetween(2, 3);
            assertThat(step.checks().stream().anyMatch(check -> check.kind() == StepCheck.Kind.TORQUE))
                    .as(step.unit().id())
                    .isEqualTo(!step.boltings().isEmpty());
        }
    }
}
