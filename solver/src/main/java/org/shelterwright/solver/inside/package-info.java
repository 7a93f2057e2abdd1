/**
 * What goes inside the units: arranging racks and stowing loose pieces, each result checked from scratch.
 */
@NullMarked
package org.shelterwright.solver.inside;

import org.jspecify.annotations.NullMarked;
