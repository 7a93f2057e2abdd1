package org.shelterwright.layouts.layout;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;

/**
 * The order in which units are brought in and bolted down.
 *
 * @param steps the units, first one first; each once
 * @param before what a person has set: one unit before another
 * @param fitters people who work at the same time
 */
public record BoltDownOrder(List<BroughtIn> steps, List<Before> before, int fitters) {
    /** Most people who work in one body. */
    public static final int MOST_FITTERS = 8;

    /**
     * One unit in the order.
     *
     * @param opening name of the opening that it comes through; {@code null}: any through which there is a way
     */
    public record BroughtIn(String unit, @Nullable String opening) {}

    /**
     * One unit must be in before another.
     *
     * @param reason why, as a person said it
     */
    public record Before(
            String first, String then, @Nullable String reason) {
        public Before {
            if (first.equals(then)) {
                throw new IllegalArgumentException("The unit \"" + first + "\" cannot be in before itself.");
            }
        }
    }

    public BoltDownOrder {
        steps = List.copyOf(steps);
        before = List.copyOf(before);
        Set<String> seen = new HashSet<>();
        for (BroughtIn step : steps) {
            if (!seen.add(step.unit())) {
                throw new IllegalArgumentException(
                        "The bolt-down order names the unit \"" + step.unit() + "\" twice. Remove one of them.");
            }
        }
        if (fitters < 1 || fitters > MOST_FITTERS) {
            throw new IllegalArgumentException(
                    "The number of fitters must be 1 to " + MOST_FITTERS + ", but is " + fitters + ".");
        }
    }

    /** An order without wishes, for one fitter. */
    public static BoltDownOrder of(List<String> units) {
        return new BoltDownOrder(
                units.stream().map(unit -> new BroughtIn(unit, null)).toList(), List.of(), 1);
    }

    /** The ids of the units, first one first. */
    public List<String> units() {
        return steps.stream().map(BroughtIn::unit).toList();
    }

    public BoltDownOrder withSteps(List<BroughtIn> others) {
        return new BoltDownOrder(others, before, fitters);
    }

    public BoltDownOrder withBefore(List<Before> others) {
        return new BoltDownOrder(steps, others, fitters);
    }

    /** Without the units that a brief no longer has. */
    public BoltDownOrder keptFor(Brief brief) {
        Set<String> known = brief.units().stream().map(UnitSpec::id).collect(Collectors.toSet());
        return withSteps(steps.stream()
                        .filter(step -> known.contains(step.unit()))
                        .toList())
                .withBefore(before.stream()
                        .filter(one -> known.contains(one.first()) && known.contains(one.then()))
                        .toList());
    }

    public BoltDownOrder withFitters(int people) {
        return new BoltDownOrder(steps, before, people);
    }
}
