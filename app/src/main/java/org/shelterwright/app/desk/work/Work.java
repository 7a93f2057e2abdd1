package org.shelterwright.app.desk.work;

import java.util.concurrent.Callable;
import java.util.function.Consumer;

/** Does long work elsewhere and brings what comes of it back to the window's thread. Tests do it at once. */
public interface Work {
    /**
     * Does something away from the window's thread.
     *
     * @param name what is being done, for the status line
     * @param task called on another thread
     * @param done called on the window's thread with what came out
     * @param failed called on the window's thread with what went wrong
     */
    <T> void start(String name, Callable<T> task, Consumer<T> done, Consumer<Exception> failed);

    /** Runs something on the window's thread, soon. Safe from any thread. */
    void onDesk(Runnable action);
}
