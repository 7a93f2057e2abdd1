package org.shelterwright.app.workpack;

import java.util.List;
import java.util.stream.Collectors;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.solver.order.Schedule;
import org.shelterwright.solver.order.Shift;

/** Who does a step, and where more people are needed to lift than there are fitters. */
record Crew(BoltDownPlan plan, Schedule schedule) {
    /** Such as "fitters A and B" or "fitters A and B, 1 more to lift". */
    String who(BoltDownStep step) {
        return schedule.shifts().stream()
                .filter(shift -> shift.step() == step.number() && shift.bringingIn())
                .findFirst()
                .map(shift -> {
                    int more = step.people() - shift.fitters().size();
                    return names(shift) + (more > 0 ? ", " + more + " more to lift" : "");
                })
                .orElse("");
    }

    private static String names(Shift shift) {
        String names = shift.fitters().stream()
                .sorted()
                .map(fitter -> String.valueOf((char) ('A' + fitter)))
                .collect(Collectors.joining(" and "));
        return (shift.fitters().size() == 1 ? "fitter " : "fitters ") + names;
    }

    /** Who fills the rack of a step on the bench, from when to when; empty if nobody does. */
    String bench(BoltDownStep step) {
        return schedule.shifts().stream()
                .filter(shift -> shift.step() == step.number() && shift.onBench())
                .findFirst()
                .map(shift -> names(shift) + ", " + Numerals.of(shift.fromMinutes(), 0) + " to "
                        + Numerals.of(shift.toMinutes(), 0) + " min")
                .orElse("");
    }

    /** The steps that need more people than there are fitters, in one sentence; empty if none does. */
    String moreHands() {
        List<BoltDownStep> lacking = plan.steps().stream()
                .filter(step -> step.people() > schedule.fitters())
                .toList();
        if (lacking.isEmpty()) {
            return "";
        }
        return "More people than the fitters are needed to lift: "
                + lacking.stream()
                        .map(step ->
                                "step " + step.number() + ", " + step.unit().name() + ", " + step.people())
                        .collect(Collectors.joining("; "))
                + ". Have them there, or a hoist or lifting table that reaches.";
    }
}
