package org.shelterwright.solver.fit;

/** Hears of a search while it runs; called from its threads, one call at a time. */
@FunctionalInterface
public interface FitObserver {
    void progress(FitProgress progress);
}
