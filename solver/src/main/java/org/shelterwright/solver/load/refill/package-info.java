/**
 * Mending a load: a region is cleared and filled anew, again and again.
 */
@NullMarked
package org.shelterwright.solver.load.refill;

import org.jspecify.annotations.NullMarked;
