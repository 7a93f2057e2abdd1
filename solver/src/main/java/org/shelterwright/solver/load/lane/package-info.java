/**
 * One search on one thread: blocks, beam, refill, and what it knows at any time.
 */
@NullMarked
package org.shelterwright.solver.load.lane;

import org.jspecify.annotations.NullMarked;
