package org.shelterwright.app.desk.command;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * One thing that can be done.
 *
 * @param id stable name by which keys are kept, such as "edit.turn-left"
 * @param name what it is called, as an order: "Turn left"
 * @param words further words by which it is found
 * @param keys keys at first, written as "Ctrl+Shift+Z"; empty if none. A single letter works only in the view
 * @param obstacle why it cannot be done now, as a sentence; empty if it can
 * @param action does it; called only if nothing is in its way
 */
public record Command(
        String id,
        String name,
        List<String> words,
        List<String> keys,
        Supplier<Optional<String>> obstacle,
        Runnable action) {
    public Command {
        words = List.copyOf(words);
        keys = List.copyOf(keys);
    }

    /** A command that can always be done. */
    public static Command of(String id, String name, List<String> keys, Runnable action) {
        return new Command(id, name, List.of(), keys, Optional::empty, action);
    }
}
