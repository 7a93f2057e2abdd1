package org.shelterwright.catalog.transit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.catalog.builtin.BuiltInCatalog;

/** Source of the values: EN 15528, line categories (seen). */
class LineCategoriesTest {
    private static final LineCategories TABLE =
            BuiltInCatalog.entries().transit().lineCategories().get(0);

    @ParameterizedTest
    @CsvSource({
        "A,16.0,5.0",
        "B1,18.0,5.0",
        "B2,18.0,6.4",
        "C2,20.0,6.4",
        "C3,20.0,7.2",
        "C4,20.0,8.0",
        "D2,22.5,6.4",
        "D3,22.5,7.2",
        "D4,22.5,8.0",
        "E4,25.0,8.0",
        "E5,25.0,8.8"
    })
    void holdsThePublishedCategories(String name, double axleT, double metreT) {
        LineCategories.Category category = TABLE.category(name).orElseThrow();

        assertThat(category.axleKg()).isEqualTo(1000 * axleT);
        assertThat(category.perMetreKg()).isEqualTo(1000 * metreT);
        assertThat(category.letter()).isEqualTo(name.substring(0, 1));
    }

    /** Computed: four axles, 90 t over 12 m between buffers give 22.5 t and 7.5 t/m, which D3 (7.2) does not take. */
    @Test
    void ninetyTonnesOverTwelveMetresNeedD4() {
        double axle = 90_000 / 4.0;
        double metre = 90_000 / 12.0;

        assertThat(TABLE.least(axle, metre))
                .get()
                .extracting(LineCategories.Category::name)
                .isEqualTo("D4");
        assertThat(TABLE.category("D3").orElseThrow().takes(axle, metre)).isFalse();
    }

    @Test
    void exactlyAtTheLimitIsTaken() {
        assertThat(TABLE.least(16_000, 5_000))
                .get()
                .extracting(LineCategories.Category::name)
                .isEqualTo("A");
        assertThat(TABLE.least(16_000.1, 5_000))
                .get()
                .extracting(LineCategories.Category::name)
                .isEqualTo("B1");
        assertThat(TABLE.least(25_000.1, 8_000)).isEmpty();
    }
}
