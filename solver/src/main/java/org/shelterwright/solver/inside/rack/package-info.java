/**
 * Arranging rack-mounted pieces: exact where small, by search where large.
 */
@NullMarked
package org.shelterwright.solver.inside.rack;

import org.jspecify.annotations.NullMarked;
