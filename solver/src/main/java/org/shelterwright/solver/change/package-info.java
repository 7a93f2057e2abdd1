/**
 * Small changes of a layout that stands: which move gains most, and what must move when the list changes while the most of what is
 * drilled and cut stays.
 */
@NullMarked
package org.shelterwright.solver.change;

import org.jspecify.annotations.NullMarked;
