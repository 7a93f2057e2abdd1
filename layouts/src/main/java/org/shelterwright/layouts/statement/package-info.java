/**
 * The mass statement of a layout: every mass with its source, growth, arms and moments, subtotals, and the totals of its load
 * states with centre of mass, inertia and axle loads.
 */
@NullMarked
package org.shelterwright.layouts.statement;

import org.jspecify.annotations.NullMarked;
