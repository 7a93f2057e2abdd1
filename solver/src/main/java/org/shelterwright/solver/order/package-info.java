/**
 * Finding the order in which units are brought in and bolted down: taking out, backwards, whatever can come out finds an order
 * whenever there is one; among all it chooses, explains what stays stuck, and spreads the work over fitters.
 */
@NullMarked
package org.shelterwright.solver.order;

import org.jspecify.annotations.NullMarked;
