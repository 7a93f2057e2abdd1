/**
 * The page of the logistics planner: the legs of a journey, what stands on which car, how it is held, and the search for a load. The
 * classes without controls need no window.
 */
@NullMarked
package org.shelterwright.app.desk.transport;

import org.jspecify.annotations.NullMarked;
