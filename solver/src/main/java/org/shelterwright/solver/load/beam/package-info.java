/**
 * Beam search: the best few loads are carried on together, each judged by completing it greedily.
 */
@NullMarked
package org.shelterwright.solver.load.beam;

import org.jspecify.annotations.NullMarked;
