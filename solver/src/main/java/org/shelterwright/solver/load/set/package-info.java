/**
 * The published sets of loading problems: their text and what a result looks like.
 */
@NullMarked
package org.shelterwright.solver.load.set;

import org.jspecify.annotations.NullMarked;
