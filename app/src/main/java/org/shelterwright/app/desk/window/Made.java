package org.shelterwright.app.desk.window;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Something that is made when it is first asked for, and then kept. */
final class Made<T> implements Supplier<T> {
    private final Supplier<T> maker;
    private @Nullable T made;

    Made(Supplier<T> maker) {
        this.maker = maker;
    }

    boolean isMade() {
        return made != null;
    }

    @Override
    public T get() {
        T now = made;
        if (now == null) {
            now = maker.get();
            made = now;
        }
        return now;
    }
}
