/**
 * Runs the fits of a study, on all processors of this machine; each run is one job that shares nothing with the others, so that
 * other engines can run the same.
 */
@NullMarked
package org.shelterwright.solver.study;

import org.jspecify.annotations.NullMarked;
