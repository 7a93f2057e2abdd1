/**
 * The time of single steps: the ledger in full and after one move, moves of the annealing, walkways.
 */
@NullMarked
package org.shelterwright.solver.bench.micro;

import org.jspecify.annotations.NullMarked;
