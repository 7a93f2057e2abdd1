/**
 * The annealing kernel: scores a move in arrays before it makes it, prices overlap by its depth, and writes nothing for a
 * rejected move.
 */
@NullMarked
package org.shelterwright.solver.fit.kernel;

import org.jspecify.annotations.NullMarked;
