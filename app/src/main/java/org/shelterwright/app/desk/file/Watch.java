package org.shelterwright.app.desk.file;

import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.work.Work;
import org.shelterwright.layouts.file.Fingerprint;

/** Looks now and then whether another has changed the file of what is on the desk. */
final class Watch {
    private final Work work;
    private final Supplier<? extends OnFile<?>> state;
    private final ReadOnlyBooleanWrapper changed = new ReadOnlyBooleanWrapper();
    private Fingerprint lastSeen = Fingerprint.NONE;
    private @Nullable Fingerprint ignored;

    /** @param state how what is on the desk stands to its file now */
    Watch(Work work, Supplier<? extends OnFile<?>> state) {
        this.work = work;
        this.state = state;
    }

    /** Whether another has changed the file since it was read or written here. */
    ReadOnlyBooleanProperty changed() {
        return changed.getReadOnlyProperty();
    }

    /** Whether that change was that the file went away. */
    boolean removed() {
        return lastSeen.equals(Fingerprint.NONE);
    }

    /** To be called once the file was read or written here. */
    void settle() {
        changed.set(false);
    }

    /** Lets the change be that was told; a further one is told again. */
    void ignore() {
        ignored = lastSeen;
        changed.set(false);
    }

    void look() {
        OnFile<?> now = state.get();
        now.file()
                .ifPresent(path -> work.start(
                        "",
                        () -> Fingerprint.of(path),
                        found -> {
                            if (state.get().equals(now)) {
                                seen(found, now);
                            }
                        },
                        failure -> {}));
    }

    private void seen(Fingerprint found, OnFile<?> now) {
        boolean known = found.equals(now.fingerprint()) || found.equals(ignored);
        if (!known && !found.equals(lastSeen)) {
            // A further change is told anew: the file may be gone by now.
            changed.set(false);
        }
        lastSeen = found;
        changed.set(!known);
    }
}
