package org.shelterwright.app.desk.window;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.shelterwright.app.desk.work.Work;

/** Does long work on one thread of its own, in the order in which it was asked for. */
final class FxWork implements Work, AutoCloseable {
    private static final int PATIENCE_S = 20;

    private final ReadOnlyStringWrapper doing = new ReadOnlyStringWrapper("");
    private final ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "desk work");
        thread.setDaemon(true);
        return thread;
    });

    /** What is being done; empty if nothing. */
    ReadOnlyStringProperty doing() {
        return doing.getReadOnlyProperty();
    }

    @Override
    public <T> void start(String name, Callable<T> task, Consumer<T> done, Consumer<Exception> failed) {
        if (!name.isEmpty()) {
            doing.set(name);
        }
        worker.execute(() -> {
            try {
                T result = task.call();
                onDesk(() -> end(name, () -> done.accept(result)));
            } catch (Exception e) {
                onDesk(() -> end(name, () -> failed.accept(e)));
            }
        });
    }

    @Override
    public void onDesk(Runnable action) {
        Platform.runLater(action);
    }

    /** Waits until what was asked for is done, as long as is sensible. */
    @Override
    public void close() {
        worker.shutdown();
        try {
            if (!worker.awaitTermination(PATIENCE_S, TimeUnit.SECONDS)) {
                worker.shutdownNow();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void end(String name, Runnable then) {
        if (!name.isEmpty() && doing.get().equals(name)) {
            doing.set("");
        }
        then.run();
    }
}
