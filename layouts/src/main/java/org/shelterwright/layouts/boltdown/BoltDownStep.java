package org.shelterwright.layouts.boltdown;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.handling.Carried;
import org.shelterwright.layouts.handling.Handling;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.ways.Passage;

/**
 * One step: a unit is brought in, set, bolted, connected and checked.
 *
 * @param number from 1
 * @param host name of the unit that carries it; {@code null} if none does
 * @param passage its way past those that are in already, from its place outward
 * @param datums by which it is set
 * @param boltings its fixings, those that are alike together; empty if it is loose
 * @param carried in what state it is brought in, and how it is moved
 * @param hold what is to be released before going on, in one line; {@code null} if nothing
 * @param minutesBench time to fill it on the bench before (min); all times are 0 if the rules do not set them
 * @param minutesIn time to bring it in (min)
 * @param minutesAt time at its place (min)
 */
public record BoltDownStep(
        int number,
        PlacedUnit unit,
        @Nullable String host,
        Passage passage,
        List<Datum> datums,
        List<Bolting> boltings,
        List<String> tools,
        Carried carried,
        List<CableTask> cables,
        List<StepCheck> checks,
        List<String> cautions,
        @Nullable String hold,
        double minutesBench,
        double minutesIn,
        double minutesAt) {
    public BoltDownStep {
        datums = List.copyOf(datums);
        boltings = List.copyOf(boltings);
        tools = List.copyOf(tools);
        cables = List.copyOf(cables);
        checks = List.copyOf(checks);
        cautions = List.copyOf(cautions);
    }

    /** How it is moved; {@code null} if its mass is not known. */
    public @Nullable Handling handling() {
        return carried.handling();
    }

    /** People who are needed to bring it in; two if that is not known. */
    public int people() {
        Handling known = handling();
        return known == null ? 2 : known.people();
    }

    /** Time of the step at and in the body (min), without the bench. */
    public double minutes() {
        return minutesIn + minutesAt;
    }
}
