/**
 * Load states and sums of mass: which tanks are full, who is aboard, what stands where, and the worst that any of it can
 * do to a quantity that is linear in the masses, or a ratio of two such quantities.
 */
@NullMarked
package org.shelterwright.layouts.state;

import org.jspecify.annotations.NullMarked;
