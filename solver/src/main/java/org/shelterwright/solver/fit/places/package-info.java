/**
 * Where a unit may be: sets of anchors (places of the low corner of its turned size) that the hard points, walls, roof
 * and hosts allow.
 */
@NullMarked
package org.shelterwright.solver.fit.places;

import org.jspecify.annotations.NullMarked;
