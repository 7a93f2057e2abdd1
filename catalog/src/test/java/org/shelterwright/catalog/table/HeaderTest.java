package org.shelterwright.catalog.table;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HeaderTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Mass [kg]",
                "mass (kg)",
                "Mass, kg",
                "mass_kg",
                "MASS kg",
                "Mass in kg",
                "mass / kg",
                "Mass (KG) "
            })
    void takesTheUnitOffInEverySpelling(String text) {
        assertThat(Header.of(text)).isEqualTo(new Header("mass", Unit.KG, null));
    }

    @Test
    void keepsAnUnknownUnitApart() {
        assertThat(Header.of("Width [cubits]")).isEqualTo(new Header("width", null, "cubits"));
    }

    @Test
    void takesAHeaderWithoutAUnit() {
        assertThat(Header.of("Centre  X")).isEqualTo(new Header("centre x", null, null));
        assertThat(Header.of("Part no.")).isEqualTo(new Header("part no", null, null));
    }

    @Test
    void addressesCellsAsSpreadsheetsDo() {
        assertThat(Cell.address(0, 0)).isEqualTo("A1");
        assertThat(Cell.address(2, 6)).isEqualTo("C7");
        assertThat(Cell.address(26, 9)).isEqualTo("AA10");
        assertThat(Cell.address(701, 0)).isEqualTo("ZZ1");
        assertThat(Cell.address(702, 0)).isEqualTo("AAA1");
    }
}
