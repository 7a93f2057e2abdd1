/**
 * Finding: places, routes, orders and loads. Holds no rule of its own.
 */
@NullMarked
package org.shelterwright.solver;

import org.jspecify.annotations.NullMarked;
