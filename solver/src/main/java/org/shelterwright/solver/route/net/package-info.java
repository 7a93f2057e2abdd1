/**
 * Many ways through one network whose links hold only so much: shortest ways, negotiated congestion, exact search for small
 * cases, and lower bounds.
 */
@NullMarked
package org.shelterwright.solver.route.net;

import org.jspecify.annotations.NullMarked;
