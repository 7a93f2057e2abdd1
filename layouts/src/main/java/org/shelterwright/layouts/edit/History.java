package org.shelterwright.layouts.edit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.layout.Layout;

/**
 * A layout with the changes that led to it, and those that were undone. Immutable; each step costs what it changed, since
 * layouts share the rest.
 */
public final class History {
    private final Layout current;
    private final @Nullable Step done;
    private final @Nullable Step undone;

    /** A change, with the layout on its far side: before it if done, after it if undone. */
    private record Step(
            String name, Layout layout, @Nullable Step next) {}

    private History(Layout current, @Nullable Step done, @Nullable Step undone) {
        this.current = current;
        this.done = done;
        this.undone = undone;
    }

    public static History of(Layout layout) {
        return new History(layout, null, null);
    }

    public Layout current() {
        return current;
    }

    /**
     * The history after a change; what was undone before it is gone. A change without effect leaves no trace.
     *
     * @throws IllegalArgumentException with a sentence if the change makes no sense for the current layout
     */
    public History after(Edit edit) {
        return after(edit.name(), edit.apply(current));
    }

    /** The history after a change that came from elsewhere, such as a search. */
    public History after(String name, Layout changed) {
        return changed.equals(current) ? this : new History(changed, new Step(name, current, done), null);
    }

    public boolean canUndo() {
        return done != null;
    }

    public boolean canRedo() {
        return undone != null;
    }

    /** The history with the last change undone; this one if there is none. */
    public History undo() {
        return done == null ? this : new History(done.layout, done.next, new Step(done.name, current, undone));
    }

    /** The history with the last undone change done again; this one if there is none. */
    public History redo() {
        return undone == null ? this : new History(undone.layout, new Step(undone.name, current, done), undone.next);
    }

    /** Names of the changes that can be undone, the latest first. */
    public List<String> undoNames() {
        return names(done);
    }

    /** Names of the changes that can be done again, the next first. */
    public List<String> redoNames() {
        return names(undone);
    }

    private static List<String> names(@Nullable Step step) {
        List<String> names = new ArrayList<>();
        for (Step at = step; at != null; at = at.next) {
            names.add(at.name);
        }
        return names;
    }
}
