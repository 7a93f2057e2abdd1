package org.shelterwright.catalog.builtin;

import java.util.Collection;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.fastener.FastenerTable;
import org.shelterwright.catalog.json.CatalogEntries;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.ResourceFolder;

/** The catalog that comes with the program: one JSON file an entry, in the folders beside this class. */
public final class BuiltInCatalog {
    private BuiltInCatalog() {}

    /**
     * Reads all entries. Cost: linear in the files; keep what it gives.
     *
     * @throws InputException if one of the program's own files is wrong
     */
    public static CatalogEntries entries() {
        return CatalogEntries.read(ResourceFolder.below(BuiltInCatalog.class));
    }

    /** Reads items, bodies, carriers and cables. */
    public static Catalog read() {
        return entries().catalog();
    }

    /** Reads the fastener tables alone. */
    public static Collection<FastenerTable> fasteners() {
        return CatalogEntries.read(ResourceFolder.below(BuiltInCatalog.class).stream()
                        .filter(file -> file.name().contains("fasteners/"))
                        .toList())
                .fasteners();
    }
}
