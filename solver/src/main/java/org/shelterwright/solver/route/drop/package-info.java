/**
 * Runs outside trays: the cheapest way of a cable along walls and units from a port to a tray or to another port, exact on the
 * grid of what stands about.
 */
@NullMarked
package org.shelterwright.solver.route.drop;

import org.jspecify.annotations.NullMarked;
