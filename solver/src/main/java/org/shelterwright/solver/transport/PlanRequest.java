package org.shelterwright.solver.transport;

import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.scene.JourneyParts;

/**
 * What is asked of a planner.
 *
 * @param journey with pinned stands kept, and everything else open
 * @param seed of what packs crates
 */
public record PlanRequest(Journey journey, JourneyParts parts, long seed) {}
