package org.shelterwright.catalog.space;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthsTest {
    @ParameterizedTest
    @CsvSource({
        // the inch is 25.4 mm exactly (international yard and pound, 1959); the rack unit of IEC 60297 and EIA-310 is
        // 1.75 in
        "1 in, 25400",
        "1.75 in, 44450",
        "19 in, 482600",
        "'19\"', 482600",
        "1 ft, 304800",
        "450, 450000",
        "450 mm, 450000",
        "12.5cm, 125000",
        "1.2 m, 1200000",
        "'1,2 m', 1200000",
        "0.001, 1",
        "-3 mm, -3000",
        "+3, 3000",
        "' 7 ', 7000",
        "500 m, 500000000"
    })
    void readsLengthsExactly(String text, int micrometres) {
        assertThat(Lengths.parse(text)).isEqualTo(micrometres);
    }

    @Test
    void readsTheTypographicMinus() {
        assertThat(Lengths.parse("\u22123 mm")).isEqualTo(-3000);
    }

    @Test
    void refusesWhatIsFinerThanAMicrometre() {
        assertThatThrownBy(() -> Lengths.parse("1.0001 mm"))
                .hasMessage("The length 1.0001 mm is finer than a micrometre."
                        + " Give at most three decimals of a millimetre.");
        assertThatThrownBy(() -> Lengths.parse("0.00001 in")).hasMessageContaining("finer than a micrometre");
        assertThatThrownBy(() -> Lengths.ofMillimetres(new BigDecimal("0.0005")))
                .hasMessageContaining("The length 0.0005 mm");
    }

    @Test
    void refusesWhatIsBeyondTheRange() {
        assertThatThrownBy(() -> Lengths.parse("500.000001 m"))
                .hasMessage("The length 500.000001 m is beyond 500 m. Maybe the unit is wrong.");
        assertThatThrownBy(() -> Lengths.parse("-501 m")).hasMessageContaining("beyond 500 m");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "mm", "1 km", "1e3", "NaN", "1.2.3", "12 mm wide", "0x10"})
    void refusesWhatIsNoLength(String text) {
        assertThatThrownBy(() -> Lengths.parse(text))
                .hasMessage("\"" + text + "\" is no length. Write millimetres, or a number with mm, cm, m, in or ft.");
    }

    @Test
    void shortensALongWrongText() {
        assertThatThrownBy(() -> Lengths.parse("x".repeat(41)))
                .hasMessageStartingWith("\"" + "x".repeat(40) + "…\" is no length.");
        assertThatThrownBy(() -> Lengths.parse("x".repeat(40)))
                .hasMessageStartingWith("\"" + "x".repeat(40) + "\" is no length.");
    }

    @ParameterizedTest
    @CsvSource({"44450, 44.45", "482600, 482.6", "1200000, 1200", "1, 0.001", "0, 0", "-3000, -3", "10000, 10"})
    void writesMillimetresWithoutNeedlessZeros(int micrometres, String text) {
        assertThat(Lengths.format(micrometres)).isEqualTo(text);
        assertThat(Lengths.parse(text)).isEqualTo(micrometres);
        assertThat(Lengths.ofMillimetres(Lengths.millimetres(micrometres))).isEqualTo(micrometres);
    }

    @Test
    void givesMetresAndRoundedMillimetres() {
        assertThat(Lengths.metres(1_500_000)).isEqualTo(1.5);
        assertThat(Lengths.rounded(44_450, 0)).isEqualTo("44");
        assertThat(Lengths.rounded(44_550, 1)).isEqualTo("44.6");
        assertThat(Lengths.rounded(1_234_500, 2)).isEqualTo("1234.50");
    }
}
