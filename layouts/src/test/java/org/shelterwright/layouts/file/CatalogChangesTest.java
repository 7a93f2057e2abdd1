package org.shelterwright.layouts.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.Catalog;

class CatalogChangesTest {
    @Test
    void findsNothingInTheSameCatalog() {
        assertThat(CatalogChanges.of(SmallPost.layout(), SmallPost.CATALOG)).isEmpty();
    }

    @Test
    void tellsEntriesThatDifferAndThatAreGone() {
        Catalog changed = Catalog.of(
                List.of(
                        SmallPost.item("rack", "[800, 600, 1900]", "\"mounting\": {\"surfaces\": [\"floor\"]}"),
                        SmallPost.TABLE,
                        SmallPost.TRAY,
                        SmallPost.GENERATOR),
                List.of(SmallPost.BODY),
                List.of(
                        SmallPost.TRUCK,
                        SmallPost.carrier("trailer", "centre-axle-trailer", ", \"grossRatingKg\": 3500")));

        List<CatalogChange> changes = CatalogChanges.of(SmallPost.layout(), changed);

        assertThat(changes)
                .containsExactly(
                        new CatalogChange("carrier", "trailer", false, List.of("grossRatingKg")),
                        new CatalogChange("item", "rack", false, List.of("size", "solids", "fixings", "ports")),
                        new CatalogChange("item", "printer", true, List.of()));
        assertThat(changes)
                .extracting(CatalogChange::sentence)
                .contains(
                        "The carrier \"trailer\" differs in the catalog (grossRatingKg). The layout keeps its own copy until"
                                + " the entry is taken over.",
                        "The item \"printer\" is no longer in the catalog. The layout keeps its own copy.");
    }
}
