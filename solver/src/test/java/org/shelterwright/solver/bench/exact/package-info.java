/**
 * A way to search for comparison: the same rules given to a general exact solver (CP-SAT).
 */
@NullMarked
package org.shelterwright.solver.bench.exact;

import org.jspecify.annotations.NullMarked;
