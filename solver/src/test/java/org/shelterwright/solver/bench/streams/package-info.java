/**
 * A way to search for comparison: the same rules as constraint streams, searched by the planning engine's default local
 * search.
 */
@NullMarked
package org.shelterwright.solver.bench.streams;

import org.jspecify.annotations.NullMarked;
