/**
 * The free spaces of a load while it is built: flat places of a height map, or empty cuboids.
 */
@NullMarked
package org.shelterwright.solver.load.space;

import org.jspecify.annotations.NullMarked;
