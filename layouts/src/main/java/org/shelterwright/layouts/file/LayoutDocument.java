package org.shelterwright.layouts.file;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.json.CatalogFormats;
import org.shelterwright.catalog.json.ContentHash;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.layout.BoltDownOrder;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.layout.Provenance;

/**
 * A layout as it stands in its file: placements as a list, and a copy of every catalog entry that it uses.
 *
 * @param placements in the order of the brief
 * @param boltDown order of bringing in and bolting down; {@code null} if there is none
 */
public record LayoutDocument(
        Brief brief,
        List<Placement> placements,
        List<Acceptance> acceptances,
        @Nullable Provenance provenance,
        @Nullable BoltDownOrder boltDown,
        Copies parts) {

    /** The catalog entries that a layout uses. */
    public record Copies(
            BodyCopy body,
            @Nullable CarrierCopy carrier,
            @Nullable CarrierCopy trailer,
            List<ItemCopy> items) {}

    /**
     * A body.
     *
     * @param sha256 hash of what the entry said when it was copied
     */
    public record BodyCopy(String sha256, Body entry) {}

    /**
     * A carrier or trailer.
     *
     * @param sha256 hash of what the entry said when it was copied
     */
    public record CarrierCopy(String sha256, Carrier entry) {}

    /**
     * An item.
     *
     * @param sha256 hash of what the entry said when it was copied
     */
    public record ItemCopy(String sha256, Item entry) {}

    static LayoutDocument of(Layout layout) {
        Body body = layout.body();
        return new LayoutDocument(
                layout.brief(),
                List.copyOf(layout.placements().values()),
                layout.acceptances(),
                layout.provenance(),
                layout.boltDown(),
                new Copies(
                        new BodyCopy(ContentHash.of(CatalogFormats.BODY, body), body),
                        copy(layout.parts().carrier()),
                        copy(layout.parts().trailer()),
                        layout.parts().items().values().stream()
                                .map(item -> new ItemCopy(ContentHash.of(CatalogFormats.ITEM, item), item))
                                .toList()));
    }

    private static @Nullable CarrierCopy copy(@Nullable Carrier carrier) {
        return carrier == null ? null : new CarrierCopy(ContentHash.of(CatalogFormats.CARRIER, carrier), carrier);
    }
}
