/**
 * Ways in and out: through which opening of a body, and along which moves, each unit of a scene gets from outside to its place
 * past those that are there. Sliding is exact; a turn is taken to need the whole disc about the middle of the unit.
 */
@NullMarked
package org.shelterwright.layouts.ways;

import org.jspecify.annotations.NullMarked;
