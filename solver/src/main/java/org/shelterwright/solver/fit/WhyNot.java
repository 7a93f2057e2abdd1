package org.shelterwright.solver.fit;

import java.util.List;

/**
 * Why no layout holds every limit.
 *
 * @param proven true if a bound proves it, false if it was found by trying
 * @param reasons one sentence each, the strongest first
 * @param relaxations limits whose relaxing makes it fit, one sentence each; empty if none was found
 */
public record WhyNot(boolean proven, List<String> reasons, List<String> relaxations) {
    public WhyNot {
        reasons = List.copyOf(reasons);
        relaxations = List.copyOf(relaxations);
    }
}
