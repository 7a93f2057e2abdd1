package org.shelterwright.app.cli.workshop;

import java.io.IOException;
import java.nio.file.Path;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;

/** Writes the documents of a layout. */
@FunctionalInterface
public interface Documents {
    /**
     * Writes all documents into a folder that is there and empty.
     *
     * @throws IOException if one cannot be written
     */
    void write(Layout layout, Ledger ledger, Path folder) throws IOException;
}
