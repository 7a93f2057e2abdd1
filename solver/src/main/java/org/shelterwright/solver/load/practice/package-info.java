/**
 * What practice asks of a load: mass, balance, stops, stacking strength, what goes together and what apart.
 */
@NullMarked
package org.shelterwright.solver.load.practice;

import org.jspecify.annotations.NullMarked;
