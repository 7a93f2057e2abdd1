package org.shelterwright.app.desk.hand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** An inch is 25.4 mm by definition (international yard and pound agreement of 1959; from memory). */
class LengthTextTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "25.4 | 25400",
                "25,4 | 25400",
                " 450+25 | 475000",
                "450 - 25.5 | 424500",
                "1.2 m | 1200000",
                "1.2m+3 in | 1276200",
                "3 in | 76200",
                "3\" | 76200",
                "19 inch | 482600",
                "1/8 in | 3175",
                "3 1/2 in | 88900",
                "2 ft 1 | -",
                "2 ft + 1 in | 635000",
                "-40 | -40000",
                "\u221240 | -40000",
                "+5 | 5000",
                ".5 | 500",
                "5. | 5000",
                "0.001 | 1",
                "12.5 cm | 125000"
            })
    void reads_numbers_units_fractions_and_sums(String text, String micrometres) {
        if (micrometres.equals("-")) {
            assertThatThrownBy(() -> LengthText.parse(text, LengthUnit.MILLIMETRE))
                    .isInstanceOf(IllegalArgumentException.class);
        } else {
            assertThat(LengthText.parse(text, LengthUnit.MILLIMETRE)).isEqualTo(Integer.parseInt(micrometres));
        }
    }

    @Test
    void a_number_without_a_unit_has_the_unit_that_is_shown() {
        assertThat(LengthText.parse("1+10 mm", LengthUnit.INCH)).isEqualTo(35_400);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | A length is missing. Type a number, such as 450 or 1.2 m.",
                "abc | \"abc\" is no length. Type a number or a sum, such as 25.4, 1.2 m, 3 in or 450+25.",
                "1..2 | \"1..2\" is no length. Type a number or a sum, such as 25.4, 1.2 m, 3 in or 450+25.",
                "450+ | \"450+\" is no length. Type a number or a sum, such as 25.4, 1.2 m, 3 in or 450+25.",
                "1.23456 | \"1.23456\" is finer than a micrometre. The nearest length is 1.235 mm.",
                "1/16 in | The fraction \"1/16 in\" is no whole number of micrometres. Type it with a point instead, rounded as you want it.",
                "1/0 in | The fraction \"1/0 in\" is divided by zero.",
                "600 m | \"600 m\" is beyond 500 m. Maybe the unit is wrong."
            })
    void says_what_is_wrong_instead_of_rounding(String text, String sentence) {
        assertThatThrownBy(() -> LengthText.parse(text, LengthUnit.MILLIMETRE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(sentence);
    }

    @ParameterizedTest
    @EnumSource(LengthUnit.class)
    void what_is_written_leads_back_to_the_same_micrometre(LengthUnit unit) {
        Random random = new Random(11);
        for (int round = 0; round < 5_000; round++) {
            int length = random.nextInt(20_000_001) - 10_000_000;
            String text = unit.format(length);
            assertThat(LengthText.parse(text, unit))
                    .as("%s, round %d of seed 11", text, round)
                    .isEqualTo(length);
        }
    }

    @Test
    void no_text_does_anything_but_give_a_length_or_a_sentence() {
        Random random = new Random(5);
        String signs = "0123456789.,+-/ mcinft\"'\u2212abc";
        for (int round = 0; round < 20_000; round++) {
            StringBuilder text = new StringBuilder();
            for (int i = random.nextInt(12); i >= 0; i--) {
                text.append(signs.charAt(random.nextInt(signs.length())));
            }
            try {
                int length = LengthText.parse(text.toString(), LengthUnit.MILLIMETRE);
                assertThat(length).isBetween(-500_000_000, 500_000_000);
            } catch (IllegalArgumentException refused) {
                assertThat(refused).as(text.toString()).isExactlyInstanceOf(IllegalArgumentException.class);
                assertThat(refused.getMessage()).as(text.toString()).endsWith(".");
            }
        }
    }

    @Test
    void lengths_are_written_in_the_chosen_unit() {
        assertThat(LengthUnit.MILLIMETRE.format(44_450)).isEqualTo("44.45");
        assertThat(LengthUnit.INCH.format(44_450)).isEqualTo("1.75");
        assertThat(LengthUnit.INCH.withSign(-254_000)).isEqualTo("\u221210\u00a0in");
        assertThat(LengthUnit.INCH.format(1)).isEqualTo("0.00004");
    }
}
