package org.shelterwright.app.cli.workshop;

import java.util.Optional;

/** Opens the window. */
@FunctionalInterface
public interface DeskOpening {
    /**
     * Opens a window and waits until it is closed.
     *
     * @param name a file or {@code sample:NAME}; empty for what was open last
     * @throws org.shelterwright.catalog.json.InputException if there is no display, or the file cannot be opened
     */
    void open(Workshop workshop, Optional<String> name);
}
