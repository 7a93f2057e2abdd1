/**
 * What is inside the units of a layout, resolved: pieces in the bays of racks, pieces in stowage places, and what they make of
 * the mass of each unit.
 */
@NullMarked
package org.shelterwright.layouts.inside;

import org.jspecify.annotations.NullMarked;
