package org.shelterwright.app.cli.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShownTest {

    @ParameterizedTest
    @CsvSource({
        "7423.54, 7423.5",
        "7423456.7, 7423457",
        "0.0123456, 0.012346",
        "44.45, 44.45",
        "-3, -3",
        "0, 0",
        "1200, 1200",
        "0.1, 0.1",
        ", -"
    })
    void figureHasFiveDigitsAndNoNeedlessZeros(Double value, String shown) {
        assertThat(Shown.figure(value)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({
        "0.97349, 97.3 %",
        "0.99999, 99.9 %",
        "1, 100.0 %",
        "1.0000001, 100.1 %",
        "12.5, 1250.0 %",
        "0, 0.0 %",
        ", -"
    })
    void useAboveOneNeverReadsAsOneHundredPercent(Double use, String shown) {
        assertThat(Shown.use(use)).isEqualTo(shown);
    }
}
