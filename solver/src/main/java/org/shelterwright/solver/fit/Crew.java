package org.shelterwright.solver.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Some threads that do the same work on several layouts; what comes out does not depend on how many they are. */
final class Crew implements AutoCloseable {
    private final ExecutorService executor;

    Crew(int threads) {
        executor = Executors.newFixedThreadPool(threads, runnable -> {
            Thread thread = new Thread(runnable, "fit-finish");
            thread.setDaemon(true);
            return thread;
        });
    }

    /** Does all tasks and gives what they made, in their order. */
    <T> List<T> all(List<Callable<T>> tasks) {
        try {
            List<T> all = new ArrayList<>();
            for (Future<T> future : executor.invokeAll(tasks)) {
                all.add(future.get());
            }
            return all;
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("The search was interrupted.", interrupted);
        } catch (ExecutionException failed) {
            throw new IllegalStateException("A layout could not be finished.", failed.getCause());
        }
    }

    @Override
    public void close() {
        executor.shutdownNow();
    }
}
