package org.shelterwright.solver.route.drop;

/** The arrays that a search works on, used again from search to search. Not for several threads. */
public final class Slate {
    final Outlook outlook = new Outlook();
    final Frontier labels = new Frontier();
}
