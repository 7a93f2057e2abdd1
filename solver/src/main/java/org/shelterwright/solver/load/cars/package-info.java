/**
 * Loading equal cars until everything is in, with as few of them as can be.
 */
@NullMarked
package org.shelterwright.solver.load.cars;

import org.jspecify.annotations.NullMarked;
