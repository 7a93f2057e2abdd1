/**
 * Judges a load from scratch, by other code than that which finds loads.
 */
@NullMarked
package org.shelterwright.solver.load.audit;

import org.jspecify.annotations.NullMarked;
