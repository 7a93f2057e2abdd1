package org.shelterwright.layouts.ledger.restraint;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.fastener.Fastener;
import org.shelterwright.catalog.space.Point;

/**
 * A change of the fixings of an item after which it holds.
 *
 * @param bolt the bolt to take for all of them; {@code null}: as they are
 * @param more places of further fixings of the mounting face, in the frame of the item
 * @param sentence the same in words
 */
public record Change(@Nullable Fastener bolt, List<Point> more, String sentence) {
    public Change {
        more = List.copyOf(more);
    }
}
