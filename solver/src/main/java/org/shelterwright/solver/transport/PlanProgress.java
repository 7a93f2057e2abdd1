package org.shelterwright.solver.transport;

/**
 * Where a search for a load stands.
 *
 * @param tries plans that were made and checked so far
 * @param of plans that will be made if it is not stopped
 * @param best how good the best of them is
 */
public record PlanProgress(int tries, int of, PlanMeasure best) {}
