package org.shelterwright.solver.study;

/** Hears of a study while it runs; called from its threads, one call at a time. */
@FunctionalInterface
public interface StudyObserver {
    void progress(StudyProgress progress);
}
