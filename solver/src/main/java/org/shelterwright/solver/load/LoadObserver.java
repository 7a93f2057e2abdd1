package org.shelterwright.solver.load;

/** Hears of a search for a load while it runs; called from its threads, one call at a time. */
@FunctionalInterface
public interface LoadObserver {
    void progress(LoadProgress progress);
}
