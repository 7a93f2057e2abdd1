package org.shelterwright.catalog.transit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Millimetres;

/**
 * The cross-section that a loaded car must keep within on a way.
 *
 * @param steps corners of one half from low to high, above rail or ground
 * @param allowedThrow what the outline already allows for in a curve of {@code curveM} (µm)
 * @param curveM radius of the curve that the outline is made for (m); {@code null} if curves need nothing more
 * @param length greatest length of one vehicle (µm); {@code null} if not limited
 * @param combinationLength greatest length of vehicle and trailer (µm); {@code null} if not limited
 */
public record Outline(
        String id,
        String name,
        List<Step> steps,
        @Millimetres int allowedThrow,
        @Nullable Double curveM,
        @Nullable @Millimetres Integer length,
        @Nullable @Millimetres Integer combinationLength,
        Source source,
        @Nullable String note) {
    public Outline {
        steps = List.copyOf(steps);
        if (steps.size() < 2) {
            throw new IllegalArgumentException("The outline " + id + " needs at least two steps.");
        }
        Step.requireRising(steps);
        if (allowedThrow < 0) {
            throw new IllegalArgumentException(
                    "The allowed throw of " + Lengths.format(allowedThrow) + " mm must be at least 0.");
        }
        if (curveM != null) {
            Figures.positive("radius of the curve of outline " + id + " (m)", curveM);
        }
    }

    public int lowest() {
        return steps.get(0).height();
    }

    public int highest() {
        return steps.get(steps.size() - 1).height();
    }

    /** The greatest half width anywhere (µm). */
    public int widest() {
        return steps.stream().mapToInt(Step::halfWidth).max().orElse(0);
    }

    /** The least half width between two heights (µm); -1 if one of them is below or above the outline. */
    public int halfWidth(int low, int high) {
        return Step.leastHalfWidth(steps, low, high);
    }
}
