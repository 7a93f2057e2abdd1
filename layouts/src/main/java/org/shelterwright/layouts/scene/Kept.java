package org.shelterwright.layouts.scene;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/** Things derived from something immutable, made once each and kept with it. Safe for several threads. */
final class Kept {
    private final Map<Class<?>, Object> values = new ConcurrentHashMap<>(4);

    /** Gives what is kept, or makes it; two threads that ask at once may both make it. */
    <T> T get(Class<T> type, Supplier<T> maker) {
        Object value = values.get(type);
        if (value == null) {
            value = maker.get();
            values.put(type, value);
        }
        return type.cast(value);
    }
}
