/**
 * Briefs with a known solution: a body cut into pieces, each piece a unit.
 */
@NullMarked
package org.shelterwright.solver.fit.planted;

import org.jspecify.annotations.NullMarked;
