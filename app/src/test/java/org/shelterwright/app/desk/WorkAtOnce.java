package org.shelterwright.app.desk;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.shelterwright.app.desk.work.Work;

/** Does work at once, or holds it back until it is let go. */
public final class WorkAtOnce implements Work {
    private final Deque<Runnable> waiting = new ArrayDeque<>();
    private boolean held;

    /** From now on work waits for {@link #letGo}. */
    public void hold() {
        held = true;
    }

    /** Does everything that waits, and what comes of it. */
    public void letGo() {
        held = false;
        while (!waiting.isEmpty()) {
            waiting.remove().run();
        }
    }

    @Override
    public <T> void start(String name, Callable<T> task, Consumer<T> done, Consumer<Exception> failed) {
        Runnable all = () -> {
            T result;
            try {
                result = task.call();
            } catch (Exception e) {
                failed.accept(e);
                return;
            }
            done.accept(result);
        };
        if (held) {
            waiting.add(all);
        } else {
            all.run();
        }
    }

    @Override
    public void onDesk(Runnable action) {
        action.run();
    }
}
