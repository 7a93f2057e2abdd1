/**
 * Shortest trees that join given nodes of a graph (Steiner trees), with a lower bound: dual ascent, reduction by reduced cost,
 * local search and branching.
 */
@NullMarked
package org.shelterwright.solver.route.tree;

import org.jspecify.annotations.NullMarked;
