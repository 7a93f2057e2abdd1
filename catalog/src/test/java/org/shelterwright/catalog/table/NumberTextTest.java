package org.shelterwright.catalog.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberTextTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "600|600",
                "44.45|44.45",
                "-3|-3",
                "12,5|12.5",
                "0,125|0.125",
                "1.234,5|1234.5",
                "1,234.5|1234.5",
                "1,234,567|1234567",
                "1.234.567|1234567",
                "1 234,5|1234.5",
                ".5|0.5",
                "1.234|1.234",
                "1234,567|1234.567",
                "12.|12"
            })
    void readsWhatCanBeReadInOneWay(String text, BigDecimal value) {
        assertThat(NumberText.parse(text, false).value()).isEqualByComparingTo(value);
    }

    @Test
    void doubtsALoneCommaBeforeThreeDigits() {
        NumberText number = NumberText.parse("1,234", false);

        assertThat(number.value()).isNull();
        assertThat(number.doubtful()).isTrue();
        assertThat(number.trouble()).isEqualTo("may mean 1234 or 1.234");
    }

    @Test
    void doubtsALonePointBeforeThreeDigitsAmongDecimalCommas() {
        assertThat(NumberText.parse("1.234", true).doubtful()).isTrue();
        assertThat(NumberText.parse("0.234", true).value()).isEqualByComparingTo("0.234");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "about 600",
                "600?",
                "600-800",
                "600 x 800",
                "1,23,4",
                "1.2.3",
                "--5",
                "NaN",
                "1e5",
                ".",
                "1,2.3,4"
            })
    void refusesWhatIsNoPlainNumber(String text) {
        NumberText number = NumberText.parse(text, false);

        assertThat(number.value() == null || number.unit() != null).isTrue();
        assertThat(number.doubtful()).isFalse();
    }

    @Test
    void keepsTheUnitBehindTheNumber() {
        assertThat(NumberText.parse("19 in", false).unit()).isEqualTo("in");
        assertThat(NumberText.parse("1.75\"", false).unit()).isEqualTo("\"");
        assertThat(NumberText.parse("12,5kg", false).remark()).isEqualTo("was read as 12.5");
    }
}
