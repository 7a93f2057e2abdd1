/**
 * The planning model and the phases of one lane: greedy construction and annealing as custom phases, then local search.
 */
@NullMarked
package org.shelterwright.solver.fit.planning;

import org.jspecify.annotations.NullMarked;
