/**
 * Why nothing fits: cheap proofs first, else the smallest set of limits whose relaxing was seen to make it fit.
 */
@NullMarked
package org.shelterwright.solver.fit.whynot;

import org.jspecify.annotations.NullMarked;
