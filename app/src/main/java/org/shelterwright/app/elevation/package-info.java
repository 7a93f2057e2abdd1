/**
 * Drawings of the insides of units: rack elevations at true scale, sketches of stowage places, labels.
 */
@NullMarked
package org.shelterwright.app.elevation;

import org.jspecify.annotations.NullMarked;
