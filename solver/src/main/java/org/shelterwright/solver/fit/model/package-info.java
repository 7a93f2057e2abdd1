/**
 * The compiled problem: a brief turned into arrays that the search can score without making objects.
 */
@NullMarked
package org.shelterwright.solver.fit.model;

import org.jspecify.annotations.NullMarked;
