package org.shelterwright.app.desk.bolt;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.boltdown.BoltDownStep;

/**
 * One line of the list of steps.
 *
 * @param state where it stands
 * @param time such as "34 min"
 * @param trouble whether its unit has no way in
 */
record StepRow(int number, String name, String time, State state, boolean trouble) {
    /** Where a step stands. */
    enum State {
        DONE,
        NOW,
        TO_COME
    }

    /**
     * The lines of a plan.
     *
     * @param now number of the step that is looked at
     */
    static List<StepRow> of(BoltDownPlan plan, int now) {
        List<StepRow> rows = new ArrayList<>();
        for (BoltDownStep step : plan.steps()) {
            State state = step.number() < now ? State.DONE : step.number() == now ? State.NOW : State.TO_COME;
            rows.add(new StepRow(
                    step.number(),
                    step.unit().name(),
                    time(step.minutes()),
                    state,
                    !step.passage().free()));
        }
        return rows;
    }

    /** A time in words, such as "34 min" or "1 h 34". */
    static String time(double minutes) {
        long whole = Math.round(minutes);
        String hours = whole / 60 + " h";
        return whole < 60 ? whole + " min" : whole % 60 == 0 ? hours : hours + " " + whole % 60;
    }

    /** The line as a sentence, for people who hear the screen. */
    String spoken() {
        return "Step " + number + ", " + name + ", " + time
                + switch (state) {
                    case DONE -> ", in";
                    case NOW -> ", now";
                    case TO_COME -> ", to come";
                }
                + (trouble ? ", no way in" : "");
    }
}
