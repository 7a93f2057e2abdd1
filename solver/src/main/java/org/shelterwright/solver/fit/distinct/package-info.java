/**
 * Which layouts are truly different, and the choice of a few good and different ones.
 */
@NullMarked
package org.shelterwright.solver.fit.distinct;

import org.jspecify.annotations.NullMarked;
