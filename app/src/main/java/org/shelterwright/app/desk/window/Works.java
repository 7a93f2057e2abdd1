package org.shelterwright.app.desk.window;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.StringBinding;

/**
 * The long work of a window. What may take a while has a thread of its own, so that nothing waits for it that must not: least of all
 * the keeping of unsaved work.
 */
final class Works implements AutoCloseable {
    private final FxWork asked = new FxWork();
    private final FxWork keeping = new FxWork();
    private final FxWork searching = new FxWork();
    private final FxWork loading = new FxWork();
    private final FxWork ordering = new FxWork();
    private final FxWork settling = new FxWork();

    /** Held here: a binding that nobody holds is gone with the next collection, and with it what it would tell. */
    private final StringBinding doing = Bindings.createStringBinding(
            () -> Stream.of(asked, keeping)
                    .map(work -> work.doing().get())
                    .filter(words -> !words.isEmpty())
                    .collect(Collectors.joining(", ")),
            asked.doing(),
            keeping.doing());

    /** What a person asked for and waits for: opening, documents, wires. */
    FxWork asked() {
        return asked;
    }

    /** Saving, and keeping what is not saved. */
    FxWork keeping() {
        return keeping;
    }

    /** The search for places. */
    FxWork searching() {
        return searching;
    }

    /** The search for a load. */
    FxWork loading() {
        return loading;
    }

    /** The search for an order of bolting down. */
    FxWork ordering() {
        return ordering;
    }

    /** The part of the ledger that takes longer. */
    FxWork settling() {
        return settling;
    }

    /** What is being done that a person waits for, in words. */
    StringBinding doing() {
        return doing;
    }

    /** Waits for each, as long as is sensible. */
    @Override
    public void close() {
        List.of(loading, searching, ordering, settling, asked, keeping).forEach(FxWork::close);
    }
}
