package org.shelterwright.app.desk.file;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.edit.History;
import org.shelterwright.layouts.file.Fingerprint;
import org.shelterwright.layouts.ledger.Ledger;

/**
 * What stands in the file of what is on the desk.
 *
 * @param path the file; {@code null} if it was never saved
 * @param fingerprint what the file held when it was last read or written
 * @param saved the content of it, or the one that was begun with
 * @param ledger the ledger of that content; part of it may still be to come
 * @param steps changes that the history held then
 * @param at when it was read or written
 * @param readOnly why nothing may be saved under its name; {@code null} if it may
 */
public record OnFile<T>(
        @Nullable Path path,
        Fingerprint fingerprint,
        T saved,
        Ledger ledger,
        int steps,
        Instant at,
        @Nullable String readOnly) {

    OnFile<T> withLedger(Ledger other) {
        return new OnFile<>(path, fingerprint, saved, other, steps, at, readOnly);
    }

    public Optional<Path> file() {
        return Optional.ofNullable(path);
    }

    /** How many changes the history is away from what is saved; none if it leads to the same content. */
    public int changesSince(History<T> history) {
        if (history.current().equals(saved)) {
            return 0;
        }
        return Math.max(1, Math.abs(history.undoNames().size() - steps));
    }
}
