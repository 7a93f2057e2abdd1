package org.shelterwright.catalog.json;

import org.jspecify.annotations.Nullable;

/**
 * How one type stands in files. Safe for several threads.
 *
 * @param <T> the type
 */
interface Codec<T> {
    /** Gives the value, or tells the trail what is wrong and gives {@code null}. */
    @Nullable
    T read(Node node, Trail trail);

    /** Gives what stands for a value in a file. */
    Node write(T value);

    /** What a key holds that is left out; {@code null} if it must not be left out. */
    default @Nullable T whenAbsent() {
        return null;
    }
}
