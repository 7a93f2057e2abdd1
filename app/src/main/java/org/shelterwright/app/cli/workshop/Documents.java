package org.shelterwright.app.cli.workshop;

import java.nio.file.Path;
import java.util.List;
import org.shelterwright.app.report.Document;
import org.shelterwright.app.sheet.Particulars;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.scene.Scene;

/** Writes the documents of a layout. */
@FunctionalInterface
public interface Documents {
    /**
     * Writes all documents into a folder: all of them or none.
     *
     * @return what was written
     * @throws org.shelterwright.catalog.json.InputException if the folder cannot be written to
     */
    List<Document> write(Scene scene, Ledger ledger, Particulars particulars, Path folder);
}
