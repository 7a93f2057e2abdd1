package org.shelterwright.solver.route;

import java.util.Map;
import org.shelterwright.layouts.layout.Route;

/**
 * What one pass laid.
 *
 * @param routes by wire
 * @param cost laying cost in metres of tray
 * @param bound lower bound of it
 * @param within whether nothing is overfull
 */
record Laid(Map<String, Route> routes, double cost, double bound, boolean within, int rounds) {}
