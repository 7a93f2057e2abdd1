/**
 * A load while it is built: what stands where, what is left, and which block comes next.
 */
@NullMarked
package org.shelterwright.solver.load.packing;

import org.jspecify.annotations.NullMarked;
