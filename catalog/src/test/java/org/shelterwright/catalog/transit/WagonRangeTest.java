package org.shelterwright.catalog.transit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.builtin.BuiltInCatalog;

/** Source of the ranges: a railway's handbook of freight wagons, class letters (seen). */
class WagonRangeTest {
    private static final Transit TRANSIT = BuiltInCatalog.entries().transit();
    private static final WagonClasses TABLE = TRANSIT.wagonClasses().get(0);

    private static final int M = 1_000_000;

    @Test
    void readsACoveredWagonOfFourAxles() {
        WagonRange range = WagonRange.of("Habbiins", TABLE);

        assertThat(range.axles()).isEqualTo(4);
        assertThat(range.lengthFrom()).isEqualTo(22 * M);
        assertThat(range.lengthBelow()).isNull();
        assertThat(range.loadFromKg()).isEqualTo(60_000);
        assertThat(range.kmh()).isEqualTo(100);
        assertThat(range.meanings())
                .containsExactly(
                        "H covered, special",
                        "a four axles",
                        "bb very long",
                        "ii strong opening side walls",
                        "n heavy load",
                        "s up to 100 km/h");
    }

    @Test
    void readsAFlatWagonOfSixAxles() {
        WagonRange range = WagonRange.of("Samms", TABLE);

        assertThat(range.axles()).isEqualTo(6);
        assertThat(range.lengthBelow()).isEqualTo(18 * M);
        assertThat(range.loadFromKg()).isEqualTo(60_000);
        assertThat(range.loadToKg()).isEqualTo(75_000);
    }

    @Test
    void readsOrdinaryWagonsAndIgnoresTheKeepersOwnLetters() {
        WagonRange rgs = WagonRange.of("Rgs", TABLE);
        assertThat(rgs.lengthFrom()).isEqualTo(18 * M);
        assertThat(rgs.lengthBelow()).isEqualTo(22 * M);
        assertThat(rgs.loadFromKg()).isEqualTo(50_000);

        WagonRange gbs = WagonRange.of("Gbs", TABLE);
        assertThat(gbs.axles()).isEqualTo(2);
        assertThat(gbs.lengthFrom()).isEqualTo(12 * M);

        assertThat(WagonRange.of("Res-x", TABLE).meanings()).hasSize(3);
    }

    @Test
    void tellsUnknownLetters() {
        assertThatThrownBy(() -> WagonRange.of("Zans", TABLE))
                .hasMessage(
                        "The wagon class \"Zans\" begins with \"Z\", which the table Class letters of wagons lacks. It has"
                                + " G, H, K, L, R, S.");
        assertThatThrownBy(() -> WagonRange.of("Rzs", TABLE))
                .hasMessage("The wagon class \"Rzs\" has \"z\", which class R does not know for 4 axles.");
    }

    @Test
    void everyBuiltInWagonKeepsWhatItsLettersGuarantee() {
        for (TransitCar car : TRANSIT.cars()) {
            String letters = car.letters();
            if (letters == null) {
                continue;
            }
            WagonRange range = WagonRange.of(letters, TABLE);
            double most = car.loadLimits().stream()
                    .mapToDouble(CategoryLoad::loadKg)
                    .max()
                    .orElseThrow();

            assertThat(car.axleCount()).as(car.id()).isEqualTo(range.axles());
            if (range.lengthFrom() != null) {
                assertThat(car.deck().length()).as(car.id()).isGreaterThanOrEqualTo(range.lengthFrom());
            }
            if (range.lengthBelow() != null) {
                assertThat(car.deck().length()).as(car.id()).isLessThan(range.lengthBelow());
            }
            if (range.loadFromKg() != null) {
                assertThat(most).as(car.id()).isGreaterThanOrEqualTo(range.loadFromKg());
            }
            if (range.loadToKg() != null) {
                assertThat(most).as(car.id()).isLessThanOrEqualTo(range.loadToKg());
            }
        }
    }
}
