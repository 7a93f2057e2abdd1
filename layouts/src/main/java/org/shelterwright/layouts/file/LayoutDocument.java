package org.shelterwright.layouts.file;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.json.CatalogFormats;
import org.shelterwright.catalog.json.ContentHash;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.layout.BoltDownOrder;
import org.shelterwright.layouts.layout.Contents;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.PiecePlace;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.layout.Provenance;
import org.shelterwright.layouts.layout.Route;

/**
 * A layout as it stands in its file: placements as a list, and a copy of every catalog entry that it uses.
 *
 * @param placements in the order of the brief
 * @param routes how wires are laid, in the order of the brief
 * @param boltDown order of bringing in and bolting down; {@code null} if there is none
 * @param contents what is inside the units; {@code null} if the brief lists no pieces
 */
public record LayoutDocument(
        Brief brief,
        List<Placement> placements,
        List<Route> routes,
        List<Acceptance> acceptances,
        @Nullable Provenance provenance,
        @Nullable BoltDownOrder boltDown,
        @Nullable ContentsCopy contents,
        Copies parts) {

    /** The catalog entries that a layout uses. */
    public record Copies(
            BodyCopy body,
            @Nullable CarrierCopy carrier,
            @Nullable CarrierCopy trailer,
            List<ItemCopy> items,
            List<CableCopy> cables) {}

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

    /**
     * A cable.
     *
     * @param sha256 hash of what the entry said when it was copied
     */
    public record CableCopy(String sha256, Cable entry) {}

    /**
     * What is inside the units.
     *
     * @param kinds the catalog entries of the pieces
     * @param places where the pieces ride, in the order of the brief
     */
    public record ContentsCopy(List<PieceCopy> kinds, List<PiecePlace> places) {
        static @Nullable ContentsCopy of(Layout layout) {
            Contents contents = layout.contents();
            if (contents.kinds().isEmpty() && contents.places().isEmpty()) {
                return null;
            }
            return new ContentsCopy(
                    contents.kinds().values().stream()
                            .map(piece -> new PieceCopy(ContentHash.of(CatalogFormats.PIECE, piece), piece))
                            .toList(),
                    layout.brief().listed().pieces().stream()
                            .map(spec -> contents.places().get(spec.id()))
                            .filter(Objects::nonNull)
                            .toList());
        }
    }

    /**
     * A kind of piece.
     *
     * @param sha256 hash of what the entry said when it was copied
     */
    public record PieceCopy(String sha256, Piece entry) {}

    static LayoutDocument of(Layout layout) {
        Body body = layout.body();
        return new LayoutDocument(
                layout.brief(),
                List.copyOf(layout.placements().values()),
                List.copyOf(layout.routes().values()),
                layout.acceptances(),
                layout.provenance(),
                layout.boltDown(),
                ContentsCopy.of(layout),
                new Copies(
                        new BodyCopy(ContentHash.of(CatalogFormats.BODY, body), body),
                        copy(layout.parts().carrier()),
                        copy(layout.parts().trailer()),
                        layout.parts().items().values().stream()
                                .map(item -> new ItemCopy(ContentHash.of(CatalogFormats.ITEM, item), item))
                                .toList(),
                        layout.parts().cables().values().stream()
                                .map(cable -> new CableCopy(ContentHash.of(CatalogFormats.CABLE, cable), cable))
                                .toList()));
    }

    private static @Nullable CarrierCopy copy(@Nullable Carrier carrier) {
        return carrier == null ? null : new CarrierCopy(ContentHash.of(CatalogFormats.CARRIER, carrier), carrier);
    }
}
