/**
 * Cutting cables from drums: as few drums as can be, with a lower bound.
 */
@NullMarked
package org.shelterwright.solver.route.cut;

import org.jspecify.annotations.NullMarked;
