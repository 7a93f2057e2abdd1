/**
 * Finding places for the units of a brief.
 */
@NullMarked
package org.shelterwright.solver.fit;

import org.jspecify.annotations.NullMarked;
