package org.shelterwright.solver.load;

import org.shelterwright.solver.fit.StopSignal;

/** Finds a load. */
public interface Loader {
    /** Searches until the budget is used up or the signal asks to stop, and checks what was found from scratch. */
    LoadResult load(LoadRequest request, LoadObserver observer, StopSignal stop);
}
