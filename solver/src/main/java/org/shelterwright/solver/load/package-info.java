/**
 * Loading a room: stowing as much cargo as will go, so that every limit holds.
 */
@NullMarked
package org.shelterwright.solver.load;

import org.jspecify.annotations.NullMarked;
