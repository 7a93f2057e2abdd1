/**
 * Measuring: whole runs over planted fits and samples, comparison with other ways to search, and the time of single
 * steps. Run by hand, never by a test; the tests only hold that what measures is right.
 */
@NullMarked
package org.shelterwright.solver.bench;

import org.jspecify.annotations.NullMarked;
