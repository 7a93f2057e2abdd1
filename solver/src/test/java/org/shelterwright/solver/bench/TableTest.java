package org.shelterwright.solver.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TableTest {
    @Test
    void writesMarkdown() {
        String text = new Table("units", "time (s)")
                .add(10, 0.12345)
                .add(20, Double.NaN)
                .text();

        assertThat(text).isEqualTo("""
                        | units | time (s) |
                        | --- | --- |
                        | 10 | 0.123 |
                        | 20 | – |
                        """);
    }

    @Test
    void refusesARowOfAnotherLength() {
        Table table = new Table("units", "time (s)");

        assertThatThrownBy(() -> table.add(10)).hasMessage("The row has 1 cells, the table 2 columns.");
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "0.00012345, 0.000123",
        "9.876, 9.88",
        "98.76, 98.8",
        "987.6, 988",
        "98765.4, 98765",
        "-1.5, -1.50"
    })
    void givesThreeSignificantDigits(double value, String text) {
        assertThat(Table.figure(value)).isEqualTo(text);
    }
}
