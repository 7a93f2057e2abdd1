/**
 * Mends what the annealing cannot see: limits that are not compiled, judged by the live ledger itself.
 */
@NullMarked
package org.shelterwright.solver.fit.repair;

import org.jspecify.annotations.NullMarked;
