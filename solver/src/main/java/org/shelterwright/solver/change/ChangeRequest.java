package org.shelterwright.solver.change;

import org.shelterwright.layouts.layout.Layout;

/**
 * What is asked of a smallest change.
 *
 * @param before the layout as it is built
 * @param asked the same with the changed list: units where they were, as far as they are still asked for, new ones without place
 * @param moves moves that each search may try
 * @param threads threads of each search; the answer does not depend on it
 */
public record ChangeRequest(Layout before, Layout asked, long seed, long moves, int threads) {}
