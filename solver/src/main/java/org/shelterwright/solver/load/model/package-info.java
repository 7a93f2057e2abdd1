/**
 * What is to be loaded and into what, and what a load is.
 */
@NullMarked
package org.shelterwright.solver.load.model;

import org.jspecify.annotations.NullMarked;
