package org.shelterwright.app.cli.workshop;

/** Tells that the program is asked to end, as by Ctrl-C. */
@FunctionalInterface
public interface Interrupts {
    /** Nobody ever asks. */
    Interrupts NONE = onRequest -> () -> {};

    /**
     * Calls back when the program is asked to end, until the watch is closed. What was called back must end the work
     * soon; the program ends when its work has.
     */
    Watch watch(Runnable onRequest);

    /** Ends a watch. */
    interface Watch extends AutoCloseable {
        @Override
        void close();
    }
}
