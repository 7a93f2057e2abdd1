package org.shelterwright.catalog.fastener;

import java.util.List;
import org.shelterwright.catalog.source.Source;

/**
 * Fasteners with one source.
 *
 * @param id unique in a catalog, such as "metric-coarse-8.8"
 */
public record FastenerTable(String id, String name, Source source, List<Fastener> fasteners) {
    public FastenerTable {
        fasteners = List.copyOf(fasteners);
    }
}
