package org.shelterwright.solver.load;

import java.time.Duration;

/**
 * Where a search for a load stands.
 *
 * @param share volume over that of the room, of the best load so far
 */
public record LoadProgress(double share, Duration elapsed) {}
