package org.shelterwright.solver.fit;

import java.time.Duration;

/**
 * Where a search stands.
 *
 * @param moves moves tried so far by all lanes
 * @param best score of the best layout so far
 */
public record FitProgress(long moves, Duration elapsed, FitScore best) {}
