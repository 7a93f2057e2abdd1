package org.shelterwright.app.desk.file;

import java.nio.file.Path;
import org.shelterwright.layouts.edit.History;
import org.shelterwright.layouts.ledger.Ledger;

/**
 * Something on the desk that has a file: a layout, a journey.
 *
 * @param <T> what stands in the file; immutable, with an {@code equals} by content
 */
public interface Filed<T> {
    /** What it is, in a word, such as "layout". */
    String word();

    /** It with its changes. */
    History<T> history();

    /** Every limit of it as it is shown. */
    Ledger ledger();

    /** Runs something after each change. */
    void onChange(Runnable action);

    /**
     * Requires that a content can be put on the desk.
     *
     * @throws IllegalArgumentException with a sentence if it names what there is not
     */
    void require(T content);

    /** Puts a content on the desk, without a history. */
    void open(T content);

    /** Takes a content onto the desk, as one change that can be undone. */
    void take(String name, T content);

    /** A name for files of a content that has none yet. */
    String id(T content);

    /** What stands in the file. Equal contents give equal bytes. */
    byte[] bytes(T content);

    /**
     * Reads a file.
     *
     * @throws org.shelterwright.catalog.json.InputException if it cannot be read
     */
    T read(Path file);

    /** In how many things two contents differ. */
    int differences(T one, T other);
}
