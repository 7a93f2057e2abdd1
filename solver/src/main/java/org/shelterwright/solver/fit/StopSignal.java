package org.shelterwright.solver.fit;

/** Asks a search to end; the best so far is kept. Safe for several threads. */
public final class StopSignal {
    private volatile boolean stopped;

    public void stop() {
        stopped = true;
    }

    public boolean stopped() {
        return stopped;
    }
}
