package org.shelterwright.layouts.file;

import java.util.List;

/**
 * A catalog entry that differs from the copy that a layout holds.
 *
 * @param kind "item", "body", "carrier", "cable" or "piece"
 * @param id of the entry
 * @param gone true if the catalog has no such entry any more
 * @param keys the keys that differ; empty if it is gone
 */
public record CatalogChange(String kind, String id, boolean gone, List<String> keys) {
    public CatalogChange {
        keys = List.copyOf(keys);
    }

    /** What is told of it. */
    public String sentence() {
        return gone
                ? "The " + kind + " \"" + id + "\" is no longer in the catalog. The layout keeps its own copy."
                : "The " + kind + " \"" + id + "\" differs in the catalog (" + String.join(", ", keys)
                        + "). The layout keeps its own copy until the entry is taken over.";
    }
}
