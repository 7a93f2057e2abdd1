package org.shelterwright.app.cli.verb;

import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.json.CatalogEntries;
import org.shelterwright.catalog.json.CatalogFolder;
import picocli.CommandLine.Option;

/** The option that adds a person's own catalog entries. */
final class CatalogOption {
    @Option(
            names = "--catalog",
            paramLabel = "FOLDER",
            description =
                    "Folder with your own catalog entries. They take the place of built-in ones with the same id.")
    private @Nullable String folder;

    private @Nullable Catalog catalog;

    /** The built-in entries with a person's own over them. */
    Catalog over(CatalogEntries builtIn) {
        Catalog read = catalog;
        if (read == null) {
            String own = folder;
            read = own == null
                    ? builtIn.catalog()
                    : CatalogFolder.read(Inputs.path(own)).over(builtIn.catalog());
            catalog = read;
        }
        return read;
    }
}
