/** Bodies filled in a known order, for measuring and testing the search for one. */
@NullMarked
package org.shelterwright.solver.order.planted;

import org.jspecify.annotations.NullMarked;
