package org.shelterwright.layouts.edit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A layout or a journey with the changes that led to it, and those that were undone. Immutable; each step costs what it changed,
 * since its states share the rest.
 *
 * @param <T> what is changed; immutable
 */
public final class History<T> {
    private final T current;
    private final @Nullable Step<T> done;
    private final @Nullable Step<T> undone;

    /** A change, with the state on its far side: before it if done, after it if undone. */
    private record Step<T>(String name, T state, @Nullable Step<T> next) {}

    private History(T current, @Nullable Step<T> done, @Nullable Step<T> undone) {
        this.current = current;
        this.done = done;
        this.undone = undone;
    }

    public static <T> History<T> of(T first) {
        return new History<>(first, null, null);
    }

    public T current() {
        return current;
    }

    /**
     * The history after a change; what was undone before it is gone. A change without effect leaves no trace.
     *
     * @throws IllegalArgumentException with a sentence if the change makes no sense for the current state
     */
    public History<T> after(Change<T> change) {
        return after(change.name(), change.apply(current));
    }

    /** The history after a change that came from elsewhere, such as a search. */
    public History<T> after(String name, T changed) {
        return changed.equals(current) ? this : new History<>(changed, new Step<>(name, current, done), null);
    }

    public boolean canUndo() {
        return done != null;
    }

    public boolean canRedo() {
        return undone != null;
    }

    /** The history with the last change undone; this one if there is none. */
    public History<T> undo() {
        return done == null ? this : new History<>(done.state, done.next, new Step<>(done.name, current, undone));
    }

    /** The history with the last undone change done again; this one if there is none. */
    public History<T> redo() {
        return undone == null ? this : new History<>(undone.state, new Step<>(undone.name, current, done), undone.next);
    }

    /** Names of the changes that can be undone, the latest first. */
    public List<String> undoNames() {
        return names(done);
    }

    /** Names of the changes that can be done again, the next first. */
    public List<String> redoNames() {
        return names(undone);
    }

    private List<String> names(@Nullable Step<T> step) {
        List<String> names = new ArrayList<>();
        for (Step<T> at = step; at != null; at = at.next) {
            names.add(at.name);
        }
        return names;
    }
}
