/**
 * Bolting down: what has to be done for each unit in the order of a layout, with its way in, places, fixings, torques, lift,
 * cables, checks and cautions, all derived from layout and rules.
 */
@NullMarked
package org.shelterwright.layouts.boltdown;

import org.jspecify.annotations.NullMarked;
