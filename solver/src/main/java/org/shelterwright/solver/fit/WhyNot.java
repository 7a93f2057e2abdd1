package org.shelterwright.solver.fit;

import java.util.List;

/**
 * Why no layout holds every limit.
 *
 * @param proven true if a bound proves it, false if it was found by trying
 * @param reasons one sentence each, the strongest first
 * @param relaxations the fewest limits that must all be relaxed to make it fit, one line each; empty if none were looked for
 */
public record WhyNot(boolean proven, List<String> reasons, List<String> relaxations) {
    public WhyNot {
        reasons = List.copyOf(reasons);
        relaxations = List.copyOf(relaxations);
    }
}
