package org.shelterwright.app.look;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class NumeralsTest {

    @Test
    void thousandsStandApartByAThinGap() {
        assertThat(Numerals.of(1_234_567.4, 0)).isEqualTo("1\u2009234\u2009567");
        assertThat(Numerals.of(999, 0)).isEqualTo("999");
        assertThat(Numerals.of(7610.25, 1)).isEqualTo("7\u2009610.3");
    }

    @Test
    void aMinusIsATrueMinus() {
        assertThat(Numerals.of(-38, 0)).isEqualTo("\u221238");
    }

    @Test
    void lengthsAreExact() {
        assertThat(Numerals.mm(44_450)).isEqualTo("44.45");
        assertThat(Numerals.mm(2_400_000)).isEqualTo("2\u2009400");
    }

    @Test
    void shortFiguresKeepThreeDigitsAndNoNeedlessZeros() {
        assertThat(Numerals.short3(0.4)).isEqualTo("0.4");
        assertThat(Numerals.short3(9.8067)).isEqualTo("9.81");
        assertThat(Numerals.short3(47)).isEqualTo("47");
        assertThat(Numerals.short3(14_120.4)).isEqualTo("14\u2009120");
        assertThat(Numerals.short3(100)).isEqualTo("100");
    }
}
