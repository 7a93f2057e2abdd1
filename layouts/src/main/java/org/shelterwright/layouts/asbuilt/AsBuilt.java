package org.shelterwright.layouts.asbuilt;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.asbuilt.AsBuiltRecord.Check;
import org.shelterwright.layouts.asbuilt.AsBuiltRecord.Step;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.layouts.boltdown.Datum;
import org.shelterwright.layouts.boltdown.PlanKey;
import org.shelterwright.layouts.boltdown.StepCheck;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.ledger.mend.Amounts;

/**
 * A record held against the plan that it belongs to.
 *
 * @param deviations measured values that differ from what was expected
 * @param open what is not signed, not measured or not released, one sentence each
 * @param wrenches the torque wrenches that were named, each once, with until when they are calibrated as they were written
 * @param voided torques that no longer count since place or fixings of the unit were changed after the record
 * @param layout the layout with the units where they were measured
 */
public record AsBuilt(
        List<Deviation> deviations, List<String> open, List<String> voided, List<String> wrenches, Layout layout) {
    /**
     * A measured value.
     *
     * @param off measured less expected
     * @param within whether it is within its tolerance
     */
    public record Deviation(BoltDownStep step, StepCheck check, double measured, double off, boolean within) {}

    public AsBuilt {
        deviations = List.copyOf(deviations);
        open = List.copyOf(open);
        voided = List.copyOf(voided);
        wrenches = List.copyOf(wrenches);
    }

    /** Whether everything is signed, within its tolerance and still counts. */
    public boolean complete() {
        return open.isEmpty() && voided.isEmpty() && deviations.stream().allMatch(Deviation::within);
    }

    /** Holds a record against a plan. */
    public static AsBuilt of(BoltDownPlan plan, AsBuiltRecord record, Layout layout) {
        Map<String, Step> steps = new HashMap<>();
        record.steps().forEach(step -> steps.put(step.unit(), step));
        List<Deviation> deviations = new ArrayList<>();
        List<String> open = new ArrayList<>();
        List<String> voided = new ArrayList<>();
        Layout built = layout;
        for (BoltDownStep step : plan.steps()) {
            Step done = steps.get(step.unit().id());
            if (done == null) {
                open.add(name(step) + " is not in the record.");
                continue;
            }
            if (!done.joints().equals(PlanKey.joints(step))) {
                voided.add(
                        name(step) + ": place or fixings were changed after the record, so its measures and torques are"
                                + " void. Measure and tighten again.");
                continue;
            }
            open(step, done, open);
            List<Deviation> own = deviations(step, done, open);
            deviations.addAll(own);
            built = built.with(moved(built, step, own));
        }
        List<String> wrenches = record.steps().stream()
                .map(Step::wrench)
                .filter(Objects::nonNull)
                .distinct()
                .sorted()
                .toList();
        return new AsBuilt(deviations, open, voided, wrenches, built);
    }

    private static String name(BoltDownStep step) {
        return "Step " + step.number() + ", " + step.unit().name();
    }

    private static void open(BoltDownStep step, Step done, List<String> open) {
        if (done.signedBy() == null || done.signedAt() == null) {
            open.add(name(step) + " is not signed.");
        }
        boolean tightened = step.checks().stream().anyMatch(check -> check.kind() == StepCheck.Kind.TORQUE);
        if (tightened && done.wrench() == null) {
            open.add(name(step) + ": the torque wrench is not named.");
        }
        String second = done.releasedBy();
        if (step.hold() != null && second == null) {
            open.add(name(step) + ": its hold point is not released.");
        } else if (step.hold() != null && second != null && second.equals(done.signedBy())) {
            open.add(name(step) + ": its hold point was released by " + second
                    + ", who signed it. A second person must release it.");
        }
    }

    private static List<Deviation> deviations(BoltDownStep step, Step done, List<String> open) {
        Map<String, Check> checks = new HashMap<>();
        done.checks().forEach(one -> checks.put(one.check(), one));
        List<Deviation> deviations = new ArrayList<>();
        for (StepCheck check : step.checks()) {
            Check made = checks.get(check.id());
            if (made == null || !made.done()) {
                open.add(name(step) + ": not checked: " + check.text() + ".");
                continue;
            }
            Double expected = check.expected();
            Double measured = made.value();
            if (expected == null) {
                continue;
            }
            if (measured == null) {
                open.add(name(step) + ": no figure for: " + check.text() + ".");
                continue;
            }
            double off = measured - expected;
            deviations.add(new Deviation(step, check, measured, off, Math.abs(off) <= check.tolerance() + 1e-9));
        }
        return deviations;
    }

    private static Placement moved(Layout layout, BoltDownStep step, List<Deviation> deviations) {
        Placement placement = step.unit().placement();
        Point at = placement.station().pose().at();
        Box outline = step.unit().outline(Situation.ON_STATION);
        Box inside = layout.body().inside().box();
        for (Datum datum : step.datums()) {
            Double measured = measured(step, datum, deviations);
            if (measured != null) {
                int length = (int) Math.round(measured * 1000);
                Axis axis = datum.from().axis();
                int low = datum.from().sign() > 0
                        ? inside.high(axis) - length - outline.extent(axis)
                        : inside.low(axis) + length;
                at = at.with(axis, low);
            }
        }
        Pose pose = new Pose(at, placement.station().pose().yaw());
        return placement.withStation(placement.station().with(pose));
    }

    private static @Nullable Double measured(BoltDownStep step, Datum datum, List<Deviation> deviations) {
        Face from = datum.from();
        String id = step.unit().id() + "/" + from.axis().name().toLowerCase(Locale.ROOT);
        return deviations.stream()
                .filter(one -> one.check().id().equals(id))
                .map(Deviation::measured)
                .findFirst()
                .orElse(null);
    }

    /** A deviation in one sentence. */
    public static String sentence(Deviation one) {
        return name(one.step()) + ": " + one.check().text() + ", measured "
                + Amounts.number(one.measured(), 1) + " " + one.check().unit() + ", "
                + Amounts.number(Math.abs(one.off()), 1) + " off"
                + (one.within()
                        ? "."
                        : "; allowed is " + Amounts.number(one.check().tolerance(), 1)
                                + ". Set it right, or have it released.");
    }
}
