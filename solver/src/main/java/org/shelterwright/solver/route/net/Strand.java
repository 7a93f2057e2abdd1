package org.shelterwright.solver.route.net;

/**
 * Something to be led from one node to another.
 *
 * @param size what it takes of a link
 * @param classBit the bit of its class
 * @param owner its number, by which links may be its own
 */
public record Strand(int from, int to, long size, int classBit, int owner) {}
