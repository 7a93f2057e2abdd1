package org.shelterwright.layouts.revision;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.layouts.boltdown.Datum;
import org.shelterwright.layouts.scene.Scene;

/**
 * A step of bolting down that differs between two revisions.
 *
 * @param name of the unit
 * @param first its number in the first; {@code null} if there is no such step
 * @param second the same in the other
 * @param other whether what is to be done differs: where it stands, how it is bolted, lifted, cabled or checked
 */
public record StepShift(
        String name, @Nullable Integer first, @Nullable Integer second, boolean other) {
    /** The steps that differ, in the order of the second. Empty if one of the two has no order. */
    public static List<StepShift> between(Scene before, Scene after) {
        Optional<BoltDownPlan> old = BoltDownPlan.of(before);
        Optional<BoltDownPlan> now = BoltDownPlan.of(after);
        List<StepShift> shifts = new ArrayList<>();
        if (old.isEmpty() || now.isEmpty()) {
            return shifts;
        }
        Map<String, BoltDownStep> was = new LinkedHashMap<>();
        old.get().steps().forEach(step -> was.put(step.unit().id(), step));
        for (BoltDownStep step : now.get().steps()) {
            BoltDownStep earlier = was.remove(step.unit().id());
            boolean other = earlier == null || !work(earlier).equals(work(step));
            if (earlier == null || other || earlier.number() != step.number()) {
                shifts.add(new StepShift(
                        step.unit().name(), earlier == null ? null : earlier.number(), step.number(), other));
            }
        }
        was.values().forEach(step -> shifts.add(new StepShift(step.unit().name(), step.number(), null, true)));
        return shifts;
    }

    private record Work(
            List<String> datums,
            List<?> boltings,
            List<String> tools,
            List<?> cables,
            List<?> checks,
            List<String> cautions,
            @Nullable Double massKg) {}

    private static Work work(BoltDownStep step) {
        return new Work(
                step.datums().stream().map(Datum::text).toList(),
                step.boltings(),
                step.tools(),
                step.cables(),
                step.checks(),
                step.cautions(),
                step.unit().mass(Situation.ON_STATION).massKg());
    }
}
