/**
 * Finding places for the units of a brief. Nothing in this module states a rule: it calls those of the
 * layouts module, which also checks every result from scratch before anyone sees it.
 */
@NullMarked
package org.shelterwright.solver;

import org.jspecify.annotations.NullMarked;
