/**
 * Lifting and moving units by hand, on a trolley or by a hoist: the revised lifting equation and what it means for a unit.
 */
@NullMarked
package org.shelterwright.layouts.handling;

import org.jspecify.annotations.NullMarked;
